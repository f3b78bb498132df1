export { arcTangent, circlePoint } from "./angle.ts";
export { exactBounds } from "./bounds.ts";
export { congruence, type Mark, type Shape } from "./congruence.ts";
export { contact } from "./contact.ts";
export {
  type Bounds,
  boundsOfAll,
  type Convex,
  convexOfHull,
  convexOfPiece,
  type Move,
  moved,
  shifted,
  shiftedBounds,
} from "./convex.ts";
export { distance } from "./distance.ts";
export { cylinder, hullBlocked, hullDepth, hullHits } from "./hull.ts";
export { matches } from "./matches.ts";
export { once } from "./once.ts";
export { overlapDepth } from "./overlap.ts";
export * from "./picture/index.ts";
export {
  boxPiece,
  clip,
  intersect as intersectPiece,
  pieceOf,
  split,
  volume6,
} from "./piece.ts";
export {
  aboutPoint,
  compose,
  inverse,
  mirroredPlacement,
  type Placement,
  placed,
  placedPlane,
  placedSolid,
  turnAbout,
  turned,
  turnedVec,
  turnInto,
} from "./placement.ts";
export {
  axisPlane,
  boxPlanes,
  comparePlanes,
  flip,
  height,
  plane,
  planeThrough,
  planeThroughPoints,
} from "./plane.ts";
export {
  centroid,
  cut,
  EMPTY,
  intersect,
  isEmpty,
  solidBox,
  solidOf,
  subtract,
  subtractBox,
  unite,
  volume,
} from "./solid.ts";
export { blocks, travelFree } from "./sweep.ts";
export { isMirror, type Movement, mirror, mirroredContact, move, translate } from "./transform.ts";
export type * from "./types.ts";
export { homogeneous, meet, position, side, vertexAt } from "./vertex.ts";
