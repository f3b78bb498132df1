import { type Length, TOLERANCE } from "../../../units/length.ts";
import { compare, max, rational, subtract, toNumber } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { type AxisIndex, INDICES } from "../space.ts";

/** How two bodies lie to each other. */
export type Touch =
  /** Face to face: `sign` is the way from the first to the second along `axis`. */
  | { readonly kind: "faces"; readonly axis: AxisIndex; readonly sign: 1 | -1 }
  | { readonly kind: "overlap" }
  /** Face to face, but not square to each other or to the room. */
  | { readonly kind: "slanting" }
  | { readonly kind: "edge" }
  | { readonly kind: "apart"; readonly by: Length };

const tolerance = rational(TOLERANCE);

/** Judged with the one tolerance. */
export function touchOf(a: Box, b: Box): Touch {
  // Space between them along an axis: negative where they overlap there.
  const spaces = INDICES.map((i) => max(subtract(b.low[i], a.high[i]), subtract(a.low[i], b.high[i])));
  const apart = spaces.filter((space) => compare(space, tolerance) > 0);
  if (apart.length > 0) return { kind: "apart", by: apart.reduce(max) };
  const touching = INDICES.filter((i) => compare(spaces[i] as Length, rational(-TOLERANCE)) >= 0);
  const [axis, second] = touching;
  if (axis === undefined) return { kind: "overlap" };
  if (second !== undefined) return { kind: "edge" };
  const forward = toNumber(subtract(b.low[axis], a.high[axis]));
  return { kind: "faces", axis, sign: Math.abs(forward) <= TOLERANCE ? 1 : -1 };
}
