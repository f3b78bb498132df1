import type { Length } from "../../../units/length.ts";
import { max, min, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { type AxisIndex, thirdAxis, triple } from "../space.ts";
import { type Cut, type CutPlane, planeCut } from "./workpiece.ts";

/** A corner of an outline in the plane of two axes. */
export type Corner = readonly [Length, Length];

/**
 * A convex outline in the plane of axes a and b, its corners in order, taken out of the wood over the extent of `box` in the third
 * direction. `smooth` tells of each side, by the number of the corner it begins at, whether it is
 * part of a curve.
 */
export function outlineCut(
  corners: readonly Corner[],
  [a, b]: readonly [AxisIndex, AxisIndex],
  box: Box,
  smooth: (side: number) => boolean,
): Cut & { kind: "region" } {
  const third = thirdAxis(a, b);
  const turn = turns(corners);
  const sides = corners.map((from, i): CutPlane => {
    const to = corners[(i + 1) % corners.length] as Corner;
    const [along, up] = [subtract(to[0], from[0]), subtract(to[1], from[1])];
    // Outward is to the right of an outline that runs to the left.
    const out = turn > 0 ? [up, subtract(ZERO, along)] : [subtract(ZERO, up), along];
    const pick = (of: readonly Length[], elsewhere: Length) =>
      triple((axis) => (axis === a ? (of[0] as Length) : axis === b ? (of[1] as Length) : elsewhere));
    const { point, normal } = planeCut(pick(from, box.low[third]), pick(out, ZERO));
    return { point, normal, smooth: smooth(i) };
  });
  // Cut off first, the box around the outline keeps the seams between the flats to itself.
  const around = ([a, b] as const).flatMap((axis, i) =>
    ([-1n, 1n] as const).map((sign): CutPlane => {
      const at = corners.map((corner) => corner[i as 0 | 1]).reduce(sign > 0n ? max : min);
      const normal = triple((each) => (each === axis ? sign : 0n));
      return { point: triple((each) => (each === axis ? at : ZERO)), normal, smooth: false };
    }),
  );
  const ends = ([-1n, 1n] as const).map((sign): CutPlane => {
    const normal = triple((axis) => (axis === third ? sign : 0n));
    return { point: sign > 0n ? box.high : box.low, normal, smooth: false };
  });
  return { kind: "region", planes: [...around, ...sides, ...ends] };
}

/** Twice the area of the outline: above zero where its corners run to the left, from a towards b. */
const turns = (corners: readonly Corner[]): number =>
  corners.reduce((so, from, i) => {
    const to = corners[(i + 1) % corners.length] as Corner;
    const [origin] = corners as readonly [Corner, ...Corner[]];
    const at = ([x, y]: Corner) => [toNumber(subtract(x, origin[0])), toNumber(subtract(y, origin[1]))] as const;
    const [[x, y], [u, v]] = [at(from), at(to)];
    return so + x * v - u * y;
  }, 0);
