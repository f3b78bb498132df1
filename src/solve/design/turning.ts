import { inverse, type Placement, placed, placedSolid, turnedVec } from "../../geometry/index.ts";
import type { Arrangement, Direction, Fastener, Feature, Hole, Part, Point } from "../design.ts";
import { placedHardware, placedMotion } from "./hardware/placed.ts";

/** Features, holes and fasteners of parts that are not square to the room: from the bench into the room, and back. */

export function placedFeature(feature: Feature, placement: Placement): Feature {
  const origin = placed(placement, feature.origin);
  const way = (direction: Direction): Direction => turnedVec(placement, direction);
  if ("normal" in feature) return { ...feature, origin, normal: way(feature.normal) };
  const { along, across, into } = feature;
  return { ...feature, origin, along: way(along), across: way(across), into: way(into) };
}

export const placedHole = (hole: Hole, placement: Placement): Hole => ({
  ...hole,
  at: placed(placement, hole.at),
  direction: turnedVec(placement, hole.direction),
  ...(hole.slot && { slot: { ...hole.slot, along: turnedVec(placement, hole.slot.along) } }),
});

const placedFastener = (fastener: Fastener, placement: Placement): Fastener => {
  const { head, nut, body } = fastener;
  const [at, way] = [(p: Point) => placed(placement, p), (d: Direction) => turnedVec(placement, d)];
  return {
    ...fastener,
    head: { ...head, at: at(head.at) },
    direction: way(fastener.direction),
    ...(nut && { nut: { ...nut, at: at(nut.at), direction: way(nut.direction) } }),
    ...(body && { body: placedSolid(body, placement) }),
  };
};

export const placedArrangement = (
  { fasteners, holes, hardware, motion }: Arrangement,
  placement: Placement,
): Arrangement => ({
  fasteners: fasteners.map((fastener) => placedFastener(fastener, placement)),
  holes: holes.map((hole) => placedHole(hole, placement)),
  ...(hardware && { hardware: hardware.map((each) => placedHardware(each, placement)) }),
  ...(motion && { motion: placedMotion(motion, placement) }),
});

/** A part as it is worked on, in the coordinates of its body: the same part where it is square to the room. */
export function onBench(part: Part): Part {
  const { turned } = part;
  if (!turned) return part;
  const holes = part.holes.map((hole) => holeOnBench(part, hole));
  return { ...part, solid: turned.solid, features: turned.features, holes };
}

/** A hole of a part, in the coordinates of its body. Directions along an axis are put exactly on it. */
export function holeOnBench({ turned }: Part, hole: Hole): Hole {
  if (!turned) return hole;
  const { direction, slot, ...rest } = placedHole(hole, inverse(turned.placement));
  return {
    ...rest,
    direction: straight(direction),
    ...(slot && { slot: { ...slot, along: straight(slot.along) } }),
  };
}

const straight = (way: Direction): Direction =>
  way.map((n) => (Math.abs(n - Math.round(n)) < 1e-9 ? Math.round(n) + 0 : n)) as unknown as Direction;
