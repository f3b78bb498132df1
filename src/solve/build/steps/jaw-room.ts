/** Clamps that stand upright as the work lies have a jaw under it. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, max, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { axisOf } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { heightOf } from "./box-of.ts";
import { clampEnds, packingOf } from "./clamp-ends.ts";
import { FIXED } from "./clamp-span.ts";
import { placesOfClamps } from "./clamping.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** Of a pad under a jaw, and what blocks are cut to. Common practice, no source. */
const PAD = inches(1, 2);
const STEP = { inch: inches(1, 2), mm: millimetres(10) } as const;

/** How high blocks must be, at least, under what rests at some height as the work lies; zero where no jaw goes under it. */
export function blocksForJaws(work: Work, moves: readonly Move[], up: Direction, rests: Length): Length {
  const axis = axisOf(up);
  return placesOfClamps(work, moves)
    .filter((place) => place.axis === axis)
    .flatMap((place) => {
      const [low, high] = clampEnds(work, moves, place);
      const end = up[axis] > 0 ? low : high;
      return end ? [{ seat: heightOf(end.face, up), packing: packingOf(end) }] : [];
    })
    .map(({ seat, packing }) =>
      roundTo(subtract(add(add(FIXED, PAD), packing), subtract(seat, rests)), STEP[work.design.units], "up"),
    )
    .reduce(max, ZERO);
}
