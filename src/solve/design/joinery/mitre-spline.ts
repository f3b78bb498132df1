import { splineDoesNotFit } from "../../../findings/rules/spline-does-not-fit.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, min, multiply, rational, subtract, toNumber } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box, Direction, Feature, Point } from "../../design.ts";
import type { CutPlane } from "../shapes/workpiece.ts";
import { extent, middle, triple, unit, withAxis } from "../space.ts";
import { boxRegion, type Corner, inwards, mitrePlane, outerOf, pointAt, regionSolid } from "./corner.ts";
import { usualThickness } from "./tenon-section.ts";
import { type Bench, type JoineryContext, type Joining, type Loose, measured } from "./work.ts";

/**
 * A spline across the mitre of a frame, in a slot that is sawn right through from the inner to the outer edge. A third of the wood
 * thick, 3/4 in wide, the slots 1/32 in deeper than half of it (common practice, no source).
 */
export function splineOf(
  joining: Joining,
  corner: Corner,
  bench: Bench,
  context: JoineryContext,
): readonly Loose[] | null {
  const { draft } = joining;
  const { cross, third } = corner;
  const inch = context.units === "inch";
  const room = min(extent(cross, corner.join.axis), extent(cross, corner.to.axis));
  const thick = measured(draft.loose?.thick, usualThickness(extent(cross, third), inch), context);
  const widest = roundTo(half(room), context.precision, "down");
  const wide = measured(draft.loose?.wide, min(inch ? inches(3, 4) : millimetres(20), widest), context);
  if (!thick || !wide) return null;
  const slack = inch ? inches(1, 32) : millimetres(1);
  if (less(room, wide) || less(extent(cross, third), multiply(thick, rational(2)))) {
    context.report(
      splineDoesNotFit(draft.loose?.at ?? draft.with.at, {
        join: joining.join.id,
        to: joining.to.id,
        spline: `${context.print(thick)} × ${context.print(wide)}`,
        room: `${context.print(extent(cross, third))} × ${context.print(room)}`,
      }),
    );
    return null;
  }
  const plane = mitrePlane(corner);
  const slab = thinned(cross, corner, thick);
  const deep = add(half(wide), slack);
  for (const [id, sign] of [
    [joining.join.id, 1],
    [joining.to.id, -1],
  ] as const) {
    // The slot is as long as the saw makes it: from edge to edge of its part.
    const { low, high } = bench.piece(id).body;
    const around: Box = {
      low: triple((i) => (i === third ? slab.low[i] : low[i])),
      high: triple((i) => (i === third ? slab.high[i] : high[i])),
    };
    const planes = [...boxRegion(around), beside(plane, deep, 1), beside(plane, deep, -1)];
    bench.cut(id, { kind: "region", planes }, slotFeature(joining.id, corner, slab, deep, sign));
  }
  const body = regionSolid(slab, [beside(plane, half(wide), 1), beside(plane, half(wide), -1)]);
  const normal = unitNormal(plane);
  const centre = withAxis(middleOf(corner), third, middle(cross, third));
  const from = triple((i) => subtract(centre[i], rational(Math.round((normal[i] * toNumber(wide)) / 2))));
  const long = Math.sqrt(square(extent(cross, corner.join.axis)) + square(extent(cross, corner.to.axis)));
  const length = context.printItem(roundTo(rational(Math.ceil(long)), context.precision, "up"));
  const item = `spline ${context.printItem(thick)} × ${context.printItem(wide)} × ${length}`;
  return [{ kind: "spline", item, body, from, direction: normal, length: wide, thick, travels: true }];
}

const square = (length: Length): number => toNumber(length) * toNumber(length);

/** The crossing, its third direction reduced to `thick` in the middle. */
const thinned = (cross: Box, { third }: Corner, thick: Length): Box => ({
  low: withAxis(cross.low, third, subtract(middle(cross, third), half(thick))),
  high: withAxis(cross.high, third, add(middle(cross, third), half(thick))),
});

const middleOf = (corner: Corner): Point =>
  pointAt(corner, middle(corner.cross, corner.join.axis), middle(corner.cross, corner.to.axis));

export function unitNormal({ normal }: CutPlane): Direction {
  const [a, b, c] = normal.map(Number) as [number, number, number];
  const norm = Math.sqrt(a * a + b * b + c * c);
  return [a / norm, b / norm, c / norm];
}

/** The plane moved out along its normal (sign 1), or its other side moved back. Moved by whole units: far less than can be marked. */
function beside(plane: CutPlane, by: Length, sign: 1 | -1): CutPlane {
  const normal = unitNormal(plane);
  const [a, b, c] = plane.normal;
  const flip = BigInt(sign);
  return {
    point: triple((i) => add(plane.point[i], rational(Math.round(sign * normal[i] * toNumber(by))))),
    normal: [a * flip, b * flip, c * flip],
  };
}

/** The slot in one part: it runs along the mitre, and goes in square to it. */
function slotFeature(joint: string, corner: Corner, slab: Box, deep: Length, sign: 1 | -1): Feature {
  const { join, to, third } = corner;
  const wide = extent(slab, join.axis);
  const high = extent(slab, to.axis);
  const long = Math.sqrt(square(wide) + square(high));
  const run = (i: number): number =>
    i === join.axis
      ? (inwards(corner, join.axis) * toNumber(wide)) / long
      : i === to.axis
        ? (inwards(corner, to.axis) * toNumber(high)) / long
        : 0;
  const normal = unitNormal(mitrePlane(corner));
  return {
    kind: "slot",
    for: joint,
    origin: withAxis(pointAt(corner, outerOf(corner, join.axis), outerOf(corner, to.axis)), third, slab.low[third]),
    along: [run(0), run(1), run(2)],
    across: unit(third, 1),
    size: [rational(Math.round(long)), extent(slab, third), deep],
    into: triple((i) => 0 - sign * normal[i]),
  };
}
