/** The faces one would see on the wood: those of the pieces, less what their neighbours in the same solid cover. */
import { comparePlanes, flip } from "../plane.ts";
import type { Piece, PieceFace, Plane, Solid } from "../types.ts";
import { position } from "../vertex.ts";
import { area, minusConvex, type Polygon } from "./polygon.ts";
import type { HalfSpace } from "./shadow.ts";

export interface RealFace {
  readonly plane: Plane;
  /** Convex, counter-clockwise seen from outside, without overlap; coordinates in units of 1/16 µm. */
  readonly polygons: readonly Polygon[];
}

/** A sliver is smaller than 0.01 mm × 0.01 mm. */
const SLIVER = 160 * 160;

/** By plane, sorted. */
export function realFaces(solid: Solid): readonly RealFace[] {
  const facing = new Map<Plane, { piece: Piece; face: PieceFace }[]>();
  for (const piece of solid.pieces)
    for (const face of piece.faces) {
      const others = facing.get(face.plane);
      if (others) others.push({ piece, face });
      else facing.set(face.plane, [{ piece, face }]);
    }
  return [...facing]
    .map(([plane, faces]): RealFace => {
      let polygons = faces.map(({ face }): Polygon => face.vertices.map(position));
      for (const { piece, face } of facing.get(flip(plane)) ?? []) {
        const neighbour = piece.faces.filter((f) => f !== face).map((f) => halfSpace(f.plane));
        polygons = polygons.flatMap((polygon) => minusConvex(polygon, neighbour));
      }
      return { plane, polygons: polygons.filter((polygon) => area(polygon) > SLIVER) };
    })
    .filter(({ polygons }) => polygons.length > 0)
    .sort((a, b) => comparePlanes(a.plane, b.plane));
}

const halfSpace = ({ a, b, c, d, norm }: Plane): HalfSpace => ({
  normal: [a / norm, b / norm, c / norm],
  d: d / norm,
});
