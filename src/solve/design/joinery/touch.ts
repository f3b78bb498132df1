import type { Method } from "../../../parse/draft.ts";
import { type Length, millimetres, TOLERANCE } from "../../../units/length.ts";
import { add, compare, max, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { type AxisIndex, INDICES, type Triple } from "../space.ts";

/** How two bodies lie to each other. */
export type Touch =
  /** Face to face: `sign` is the way from the first to the second along `axis`. */
  | { readonly kind: "faces"; readonly axis: AxisIndex; readonly sign: 1 | -1; readonly gap: Length }
  | { readonly kind: "overlap" }
  /** Face to face, but not square to each other or to the room. */
  | { readonly kind: "slanting" }
  | { readonly kind: "edge" }
  | { readonly kind: "apart"; readonly by: Length };

const tolerance = rational(TOLERANCE);

/** Methods whose parts move for use, and stand apart: hardware, or only air, is between them. */
const APART: ReadonlySet<Method> = new Set([
  ...(["runs on", "cup hinges", "butt hinges", "continuous hinge", "slides", "undermount slides"] as const),
]);
export const standsApart = (method: Method): boolean => APART.has(method);

/** How far apart they may be and still be meant: packing, a clearance for what runs beside it. */
const REACH = millimetres(80);
/** Bodies that hardware joins: across what is open between them. */
export const acrossGap = (a: Box, b: Box): Touch => touchOf(a, b, [REACH, REACH, REACH]);

/** Judged with the one tolerance, and in each direction with what rounding may have left open there. */
export function touchOf(a: Box, b: Box, leftOpen: Triple<Length> = [ZERO, ZERO, ZERO]): Touch {
  // Space between them along an axis: negative where they overlap there.
  const spaces = INDICES.map((i) => max(subtract(b.low[i], a.high[i]), subtract(a.low[i], b.high[i])));
  const apart = spaces.filter((space, i) => compare(space, add(leftOpen[i] as Length, tolerance)) > 0);
  if (apart.length > 0) return { kind: "apart", by: apart.reduce(max) };
  const touching = INDICES.filter((i) => compare(spaces[i] as Length, rational(-TOLERANCE)) >= 0);
  const [axis, second] = touching;
  if (axis === undefined) return { kind: "overlap" };
  if (second !== undefined) return { kind: "edge" };
  const gap = max(spaces[axis] as Length, ZERO);
  const forward = compare(subtract(b.low[axis], a.high[axis]), subtract(a.low[axis], b.high[axis])) > 0;
  return { kind: "faces", axis, sign: forward ? 1 : -1, gap };
}
