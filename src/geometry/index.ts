export {
  boxPiece,
  clip,
  intersect as intersectPiece,
  pieceOf,
  split,
  volume6,
} from "./piece.ts";
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
export { isMirror, type Movement, mirror, move, translate } from "./transform.ts";
export type * from "./types.ts";
export { homogeneous, meet, position, side, vertexAt } from "./vertex.ts";
