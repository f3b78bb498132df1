import type { Solid, Vec } from "../../../geometry/index.ts";
import { height } from "../../../geometry/plane.ts";
import { type Length, TOLERANCE } from "../../../units/length.ts";
import {
  absolute,
  add,
  compare,
  divide,
  less,
  max,
  min,
  multiply,
  negate,
  rational,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/rational.ts";
import type { Point } from "../../design.ts";
import { type AxisIndex, INDICES, otherAxes, shift } from "../space.ts";

const tolerance = rational(TOLERANCE);
const onSkin = rational(-TOLERANCE);

/**
 * How far the wood reaches from a point on a solid's skin, straight into it along an axis. Exact. Zero where there is no wood.
 */
export const depthAt = (solid: Solid, from: Point, axis: AxisIndex, sign: 1 | -1): Length =>
  runAt(solid, from, axis, sign).depth;

/**
 * The same for a bore of this radius, so that its rim stays in the wood all round: what the wood is shallower a radius aside, one way and
 * the other, is taken off. Exact where the far face slopes one way, a little too little where it slopes both ways. Never below zero.
 */
export const roundDepthAt =
  (radius: Length): typeof depthAt =>
  (solid, from, axis, sign) => {
    const middle = depthAt(solid, from, axis, sign);
    const losses = otherAxes(axis).map((aside) => {
      const beside = [radius, negate(radius)].map((by) => depthAt(solid, shift(from, aside, by), axis, sign));
      return max(
        ZERO,
        subtract(
          middle,
          beside.reduce((a, b) => min(a, b)),
        ),
      );
    });
    return max(
      ZERO,
      losses.reduce((left, loss) => subtract(left, loss), middle),
    );
  };

/** How far it is along the same line to where the last of the wood ends, cuts on the way not counted. Zero where there is no wood. */
export const farAt: typeof depthAt = (solid, from, axis, sign) =>
  runsOf(solid, { from, axis, sign }).reduce((far, { to }) => max(far, to), ZERO);

/** The same along a line, and whether there is more wood beyond: then a cut lies in the way. */
export function runAt(
  solid: Solid,
  from: Point,
  axis: AxisIndex,
  sign: 1 | -1,
): { readonly depth: Length; readonly interrupted: boolean } {
  const runs = runsOf(solid, { from, axis, sign }).toSorted((a, b) => compare(a.from, b.from) || compare(a.to, b.to));
  let reach = ZERO;
  for (const run of runs) {
    if (less(add(reach, tolerance), run.from)) return { depth: reach, interrupted: true };
    reach = max(reach, run.to);
  }
  return { depth: reach, interrupted: false };
}

interface Ray {
  readonly from: Point;
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
}

/** Stretches of a ray. */
interface Run {
  readonly from: Length;
  readonly to: Length;
}

function runsOf(solid: Solid, ray: Ray): readonly Run[] {
  const near: Vec = [toNumber(ray.from[0]), toNumber(ray.from[1]), toNumber(ray.from[2])];
  const runs: Run[] = [];
  for (const piece of solid.pieces) {
    const run = passes(piece, near, ray) ? null : runThrough(piece, near, ray);
    if (run) runs.push(run);
  }
  return runs;
}

/** Whether the ray is sure to miss the piece: seen in doubles, since most pieces are nowhere near. */
function passes({ low, high }: Solid["pieces"][number], near: Vec, { axis, sign }: Ray): boolean {
  for (const i of INDICES) {
    if (near[i] < low[i] - NEAR && (i !== axis || sign === -1)) return true;
    if (near[i] > high[i] + NEAR && (i !== axis || sign === 1)) return true;
  }
  return false;
}

const NEAR = 4 * TOLERANCE;

/** The stretch of the ray that lies inside a convex piece, its skin counted in. `near`: where it begins, in doubles. */
function runThrough(piece: Solid["pieces"][number], near: Vec, { from, axis, sign }: Ray): Run | null {
  let low = onSkin;
  let high: Length | null = null;
  for (const { plane } of piece.faces) {
    const coefficients = [plane.A, plane.B, plane.C] as const;
    // Most faces lie along the ray, and well beside it.
    if (coefficients[axis] === 0n && height(plane, near) < -NEAR) continue;
    // Most others look along the axis: two of their terms are nothing.
    const room = coefficients.reduce(
      (left, c, i) => (c === 0n ? left : subtract(left, multiply(rational(c), from[i] as Length))),
      rational(plane.D),
    );
    const rate = rational(coefficients[axis] * BigInt(sign));
    if (rate.n === 0n) {
      if (room.n < 0n && less(multiply(tolerance, rational(Math.ceil(plane.norm))), absolute(room))) return null;
      continue;
    }
    const t = divide(room, rate);
    if (rate.n > 0n) high = high === null ? t : min(high, t);
    else low = max(low, t);
  }
  return high !== null && less(low, high) && less(ZERO, high) ? { from: low, to: high } : null;
}
