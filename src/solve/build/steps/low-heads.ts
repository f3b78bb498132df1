/** Heads that go in from the side, close above the bench: neither a chuck nor a hammer comes down to them. */
import { inches, millimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { subtract, toNumber } from "../../../units/rational.ts";
import { axisOf } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { heightOf, lowestOf } from "./box-of.ts";
import type { Work } from "./draft.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { isTurnedFor } from "./struck-sides.ts";

/** Half a chuck of 45 mm and the hand round it, or a hammer's swing. Common practice, no source. */
const ROOM = { inch: inches(3, 2), mm: millimetres(40) } as const;
/** What is this much short of it does. */
const NEARLY = 6 * UNITS_PER_MM;

/** The work is raised, or stands out over the edge; empty where nothing is driven so low. */
export function lowHeadTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const axis = axisOf(up);
  const room = ROOM[work.design.units];
  const bench = lowestOf(work, togetherAfter(moves), up);
  // What is turned for the hammer has room above the side that is nailed.
  const turned = isTurnedFor(work, moves, up);
  const low = moves
    .flatMap((move) => move.work.flatMap(({ drives }) => drives))
    .filter(({ tool }) => !(turned && tool === "hammer"))
    .filter(({ fastener: { direction, head } }) => {
      const above = toNumber(subtract(heightOf(head.at[axis], up), bench));
      return Math.abs(direction[axis]) < LEVEL && above < toNumber(room) - NEARLY;
    });
  if (low.length === 0) return [];
  return [
    `Raise the work on blocks at least ${work.print(room)} high, or let it stand out over the edge of the bench, where heads go in so low: neither a chuck nor a hammer has room there.`,
  ];
}

/** Cosine. */
const LEVEL = 0.1;
