/** How long a way home is: how far what moves goes along or between what stands. */
import { dot } from "../../../geometry/vec.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../units/index.ts";
import type { Direction, Part } from "../../design.ts";
import type { Halves } from "./links.ts";

type Bounds = Pick<Part["solid"], "low" | "high">;

/** In whole mm: from where it has left all behind that it passes or touches with its sides, to its place. Only along an axis; 0 else. */
export function wayThrough(
  parts: readonly Pick<Part, "solid">[],
  { moving, staying }: Halves,
  along: Direction,
): number {
  const axis = ([0, 1, 2] as const).find((i) => Math.abs(along[i]) > SQUARE);
  if (axis === undefined) return 0;
  const way = dot(along, UNIT[axis]);
  let longest = 0;
  // One pair after the other, without lists: there are as many pairs as parts squared for each way apart that is judged.
  for (const place of moving) {
    const one = parts[place]?.solid;
    for (const still of staying) {
      const other = parts[still]?.solid;
      if (one && other && isBeside(one, other, axis)) longest = Math.max(longest, past(one, other, axis, way));
    }
  }
  return Math.round(longest / UNITS_PER_MM);
}

/** Cosine of what counts as along an axis. */
const SQUARE = 1 - 1e-9;
const UNIT = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;

/** Seen along the axis they meet or touch. */
function isBeside(one: Bounds, other: Bounds, axis: 0 | 1 | 2): boolean {
  const meet = (i: 0 | 1 | 2): boolean =>
    i === axis || (one.low[i] < other.high[i] + TOLERANCE && other.low[i] < one.high[i] + TOLERANCE);
  return meet(0) && meet(1) && meet(2);
}

/** How far it goes back the way that it came until it has the other behind it. */
const past = (one: Bounds, other: Bounds, axis: 0 | 1 | 2, way: number): number =>
  way > 0 ? one.high[axis] - other.low[axis] : other.high[axis] - one.low[axis];
