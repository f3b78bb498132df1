import {
  cylinder,
  intersect,
  planeThrough,
  type Solid,
  solidBox,
  subtract as subtractSolid,
  type Vec,
} from "../../../geometry/index.ts";
import { dot, plus, times } from "../../../geometry/vec.ts";
import type { Length } from "../../../units/length.ts";
import { add, equal, multiply, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import { overChord, roundedOff } from "../../design/shapes/arc.ts";
import { featureBox } from "../../design/shapes/feature-box.ts";
import { standsOut } from "../../design/shapes/kinds.ts";
import { type Corner, outlineCut } from "../../design/shapes/region.ts";
import { type AxisIndex, axisOf, middle } from "../../design/space.ts";
import { holeOnBench } from "../../design/turning.ts";
import type { Box, Feature, Hole, Part } from "../../design.ts";
import { solidOfHull } from "../order/pegs.ts";
import { cylindersOf } from "../order/slots.ts";

/**
 * The wood that a feature of a part on the bench takes away, as a solid, slots and cut-outs with square corners; null for plane cuts,
 * rounded edges and tenons.
 */
export function roomOf(feature: Feature, body: Box): Solid | null {
  if (!("size" in feature) || standsOut(feature) || feature.kind === "round-over") return null;
  const skew = [feature.along, feature.across, feature.into].some((way) => way.filter((part) => part !== 0).length > 1);
  if (skew) return skewRoom(feature);
  const box = featureBox(feature);
  const room = solidBox(box.low, box.high);
  if (!("radius" in feature)) return room;
  const into = axisOf(feature.into);
  const deeper = (by: Length): Length => add(feature.origin[into], multiply(by, rational(feature.into[into])));
  const planesOf = (corners: readonly Corner[], other: AxisIndex) =>
    outlineCut(corners, [other, into], box, () => false).planes.map(({ point, normal }) => planeThrough(point, normal));
  if (feature.kind === "arch") {
    const run = axisOf(feature.along);
    const arc = overChord(feature.size[0], feature.size[2]);
    const corners = arc.map(([along, up]): Corner => [add(middle(box, run), along), deeper(up)]);
    return intersect(room, planesOf(corners, run));
  }
  if (feature.kind !== "rounded corner") return room;
  const other = axisOf(feature.across);
  const low = equal(box.low[other], body.low[other]);
  const aside = (by: Length): Length => (low ? add(box.low[other], by) : subtract(box.high[other], by));
  const { radius } = feature;
  // The stops end a little before the square: its other three corners close what is kept.
  const rest = [[radius, ZERO] as const, [radius, radius] as const, [ZERO, radius] as const];
  const kept = [...roundedOff(radius), ...rest].map(([u, v]): Corner => [aside(v), deeper(u)]);
  return subtractSolid(room, planesOf(kept, other));
}

/** A slot that runs across a corner. */
function skewRoom({ origin, along, across, into, size }: Extract<Feature, { readonly size: unknown }>): Solid {
  const at = vec(origin);
  const ways = [along, across, into].map((way, k) => ({ way, long: toNumber(size[k as 0 | 1 | 2]) }));
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((bits) =>
    ways.reduce<Vec>((so, { way, long }, k) => ((bits >> k) & 1 ? plus(so, times(way, long)) : so), at),
  );
  const planes = ways.flatMap(({ way, long }) => [
    { normal: times(way, -1), d: -dot(way, at) },
    { normal: way, d: dot(way, at) + long },
  ]);
  return solidOfHull({ planes, vertices: corners, edges: ways.map(({ way }) => way) });
}

/** How far the point of a twist drill reaches past the depth that it bores to, of its diameter: 118° are 0.300. ISO 235 and DIN 338 have that point (from memory). */
const POINT = 0.3;

/** The stages of a hole as envelopes, one that ends in the wood with the point of its drill. */
export const boresOf = (hole: Hole) =>
  cylindersOf(hole).map(({ mouth, diameter, depth }) =>
    cylinder(mouth, hole.direction, diameter / 2, hole.through ? depth : depth + POINT * diameter),
  );

const vec = (point: Hole["at"]): Vec => [toNumber(point[0]), toNumber(point[1]), toNumber(point[2])];

/** Joint of a hole's fastener: fastener ids begin with it. */
export const jointOf = (hole: Hole): string | null => (hole.for === null ? null : (hole.for.split(".")[0] as string));

/** The holes of a part as they lie on the bench. */
export const holesIn = (part: Part, holes: readonly Hole[]): readonly Hole[] =>
  holes.filter((hole) => hole.part === part.id).map((hole) => holeOnBench(part, hole));
