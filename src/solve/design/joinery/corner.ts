import { intersect, planeThrough, type Solid, solidBox } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { equal, multiply, type Rational, rational, ZERO } from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import { type CutPlane, planeCut } from "../shapes/workpiece.ts";
import { type AxisIndex, common, extent, INDICES, isSolidBox, otherAxes, triple } from "../space.ts";

/** Two bodies that cross at a corner, each with an end there, and the directions that matter. */
export interface Corner {
  /** Where the bodies lie over each other. */
  readonly cross: Box;
  /** The direction that each part comes from, and whether its end there is the high one. */
  readonly join: { readonly axis: AxisIndex; readonly high: boolean };
  readonly to: { readonly axis: AxisIndex; readonly high: boolean };
  /** The corner runs along this direction: both parts fill it alike. */
  readonly third: AxisIndex;
}

/**
 * The corner of two bodies; null where they do not cross at an end of each, or are not flush along the corner. With `blind` the joined
 * part may stop short within the other.
 */
export function cornerOf(join: Box, to: Box, blind = false): Corner | null {
  const cross = common(join, to);
  if (!isSolidBox(cross)) return null;
  const whole = (body: Box, i: AxisIndex): boolean =>
    equal(body.low[i], cross.low[i]) && equal(body.high[i], cross.high[i]);
  // High or low where the body has one end in the crossing; null where it has none or both.
  const end = (body: Box, i: AxisIndex): boolean | null =>
    whole(body, i) ? null : equal(body.high[i], cross.high[i]) ? true : equal(body.low[i], cross.low[i]) ? false : null;
  for (const third of INDICES.toReversed()) {
    if (!whole(join, third) || !whole(to, third)) continue;
    const [a, b] = otherAxes(third);
    for (const [p, q] of [
      [a, b],
      [b, a],
    ] as const) {
      const [own, mate] = [end(join, p), end(to, q)];
      if (own === null || mate === null || !whole(join, q)) continue;
      const inner = own ? equal(to.low[p], cross.low[p]) : equal(to.high[p], cross.high[p]);
      if (whole(to, p) || (blind && inner))
        return { cross, third, join: { axis: p, high: own }, to: { axis: q, high: mate } };
    }
  }
  return null;
}

/** The coordinate of the corner's outer edge along a direction, and of the inner one. */
export const outerOf = ({ cross, join, to }: Corner, axis: AxisIndex): Length =>
  (axis === join.axis ? join.high : to.high) ? cross.high[axis] : cross.low[axis];
export const innerOf = ({ cross, join, to }: Corner, axis: AxisIndex): Length =>
  (axis === join.axis ? join.high : to.high) ? cross.low[axis] : cross.high[axis];
/** From the outer edge into the wood: 1 or -1. */
export const inwards = ({ join, to }: Corner, axis: AxisIndex): 1 | -1 =>
  (axis === join.axis ? join.high : to.high) ? -1 : 1;

/** A point of the cross section, `u` along the joined part's direction and `v` along the other's. */
export const pointAt = (corner: Corner, u: Length, v: Length): Point =>
  triple((i) => (i === corner.join.axis ? u : i === corner.to.axis ? v : corner.cross.low[corner.third]));

/** A plane square to the cross section; the normal is outwards. */
export function sectionPlane(corner: Corner, at: Point, u: Rational, v: Rational): CutPlane {
  const { point, normal } = planeCut(
    at,
    triple((i) => (i === corner.join.axis ? u : i === corner.to.axis ? v : ZERO)),
  );
  return { point, normal };
}

/** The plane across the corner, outwards of the joined part: through the outer and the inner edge. */
export function mitrePlane(corner: Corner): CutPlane {
  const { join, to } = corner;
  const [sp, sq] = [inwards(corner, join.axis), inwards(corner, to.axis)];
  const [wide, high] = [extent(corner.cross, join.axis), extent(corner.cross, to.axis)];
  return sectionPlane(
    corner,
    pointAt(corner, outerOf(corner, join.axis), outerOf(corner, to.axis)),
    multiply(high, rational(-sp)),
    multiply(wide, rational(sq)),
  );
}

/** The six planes of a box, as a region. */
export const boxRegion = (box: Box): readonly CutPlane[] =>
  INDICES.flatMap((axis) => {
    const normal = (sign: 1n | -1n) => triple((i) => (i === axis ? sign : 0n));
    return [
      { point: box.low, normal: normal(-1n) },
      { point: box.high, normal: normal(1n) },
    ];
  });

/** What lies in a box and inside all of the planes. */
export const regionSolid = (box: Box, planes: readonly CutPlane[]): Solid =>
  intersect(
    solidBox(box.low, box.high),
    planes.map(({ point, normal }) => planeThrough(point, normal)),
  );
