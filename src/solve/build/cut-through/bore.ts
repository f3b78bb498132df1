/** How deep a bore is, and where it ends. */
import type { Length } from "../../../units/length.ts";
import { max, negate } from "../../../units/rational.ts";
import { axisOf, shift } from "../../design/space.ts";
import type { Direction, Hole, Point } from "../../design.ts";

/** Of all its stages. */
export const deepest = ({ stages }: Hole): Length => stages.map(({ depth }) => depth).reduce(max);

/** A point moved along a direction that is square to the piece. */
export function onwards(from: Point, direction: Direction, by: Length): Point {
  const axis = axisOf(direction);
  return shift(from, axis, direction[axis] > 0 ? by : negate(by));
}
