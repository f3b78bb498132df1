/** Shelves on pins that the finished piece does not let out. */
import type { Finding } from "../../../findings/finding.ts";
import { shelfCannotComeOut } from "../../../findings/rules/shelf-cannot-come-out.ts";
import { less, subtract } from "../../../units/rational.ts";
import { tellLength } from "../../../units/tell-length.ts";
import { indexOf } from "../../design/space.ts";
import type { Design, Part } from "../../design.ts";
import type { Blocking } from "./blocking.ts";
import { comesOff, fastBodies, onPins } from "./links.ts";
import type { Piece } from "./splits.ts";

/** Towards the reader, in `Blocking.directions`. */
const FRONT = 2;

/** `tilt`: ways in, pins out of the way. */
export function shutIn(design: Design, blocking: Blocking, tilt: Piece["tilt"]): readonly Finding[] {
  const { parts, joints } = design;
  const pinned = onPins({ joints });
  if (pinned.size === 0) return [];
  const [moving, bodies] = movable(design);
  const fixed = parts.flatMap((_, i) => (moving.has(i) ? [] : [i]));
  return parts.flatMap((part, i): readonly Finding[] => {
    if (!pinned.has(part.id)) return [];
    const body = bodies.find((each) => each.includes(i)) ?? [i];
    const rest = fixed.filter((other) => !body.includes(other));
    const blockers = blocking.directions.map((_, d) =>
      rest.filter((other) => body.some((own) => blocking.blocked(own, other, d))),
    );
    if (blockers.some((ids) => ids.length === 0) || tilt(body, rest)) return [];
    const way = (blockers[FRONT] ?? []).flatMap((place) => parts[place] ?? []);
    const inTheWay = way.map(({ id }) => id);
    return [shelfCannotComeOut(part.at, { shelf: part.id, inTheWay, ...openingOf(design, part, way) })];
  });
}

/** What hangs, runs or lies loose is out of the way; and all bodies, with the strip along a shelf. */
function movable({ parts, joints }: Design): readonly [ReadonlySet<number>, readonly (readonly number[])[]] {
  const bodies = fastBodies({ parts, joints });
  const moved = new Set(joints.filter(comesOff).map(({ parts: [id] }) => id));
  return [new Set(bodies.filter((body) => body.some((i) => moved.has(parts[i]?.id ?? ""))).flat()), bodies];
}

/** The room between what stands in the way at one side and at the other. */
function openingOf({ units }: Design, shelf: Part, way: readonly Part[]) {
  const axis = indexOf(shelf.axes.length);
  const middle = (part: Part) => ({ low: part.body.low[axis], high: part.body.high[axis] });
  const own = middle(shelf);
  const left = way.map(middle).filter(({ low }) => !less(own.low, low));
  const right = way.map(middle).filter(({ high }) => !less(high, own.high));
  const [from] = left.map(({ high }) => high).toSorted((a, b) => (less(a, b) ? 1 : -1));
  const [to] = right.map(({ low }) => low).toSorted((a, b) => (less(a, b) ? -1 : 1));
  if (!from || !to || !less(from, to)) return {};
  const tell = (length: Part["length"]): string => tellLength(length, units);
  return { opening: tell(subtract(to, from)), length: tell(shelf.length) };
}
