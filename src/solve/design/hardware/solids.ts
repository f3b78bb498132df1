/** Solids of hardware: boxes, and drums as the eight-sided prism around them, so that they never seem smaller than they are. */
import { intersect, planeThrough, type Solid, solidBox } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { add, half, max, min, multiply, negate, rational, subtract } from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import { type AxisIndex, INDICES, otherAxes, shift, triple } from "../space.ts";

export const boxSolid = ({ low, high }: Box): Solid => solidBox(low, high);

/** A little more than the square root of two. */
const ROOT_2 = rational(14142136, 10000000);

/** From `from`, the middle of one end, along an axis: as far as `long`, which may be negative. */
export function drum(from: Point, axis: AxisIndex, long: Length, radius: Length): Solid {
  const [a, b] = otherAxes(axis);
  const to = shift(from, axis, long);
  const [first, last] = long.n < 0n ? [to, from] : [from, to];
  const low = triple((i) => (i === axis ? first[i] : add(first[i], negate(radius))));
  const high = triple((i) => (i === axis ? last[i] : add(last[i], radius)));
  const corners = [1, -1].flatMap((x) =>
    [1, -1].map((y) => {
      const normal = INDICES.map((i) => BigInt(i === a ? x : i === b ? y : 0));
      const away = multiply(radius, ROOT_2);
      // The point of the plane on the line through the middle, along one of its two directions.
      return planeThrough(
        shift(from, a, x > 0 ? away : negate(away)),
        normal as unknown as readonly [bigint, bigint, bigint],
      );
    }),
  );
  return intersect(solidBox(low, high), corners);
}

/** A block on a face: `out` from `at` along an axis, negative the other way; `long` along `run` and `wide` along the third direction, both about `at`. */
export function block(
  at: Point,
  axis: AxisIndex,
  out: Length,
  { run, long, wide }: { readonly run: AxisIndex; readonly long: Length; readonly wide: Length },
): Solid {
  const end = add(at[axis], out);
  const reach = (i: AxisIndex): Length => half(i === run ? long : wide);
  return boxSolid({
    low: triple((i) => (i === axis ? min(at[i], end) : subtract(at[i], reach(i)))),
    high: triple((i) => (i === axis ? max(at[i], end) : add(at[i], reach(i)))),
  });
}
