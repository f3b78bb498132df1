/** The outer faces of a solid, without the seams between its pieces, as convex polygons in doubles. */
import { bounds, normalOf } from "./convex.ts";
import { once } from "./once.ts";
import { flip } from "./plane.ts";
import { edgeLimits, type Limit, loopOf, type Polygon, subtractPolygon } from "./polygon.ts";
import type { Plane, Solid, Vec } from "./types.ts";

export interface Patch {
  readonly plane: Plane;
  /** Outward unit normal. */
  readonly normal: Vec;
  readonly polygon: Polygon;
  /** The half-spaces along its edges. */
  readonly limits: readonly Limit[];
  readonly low: Vec;
  readonly high: Vec;
}

export const skin = once((solid: Solid): readonly Patch[] => {
  const faces = solid.pieces.flatMap((piece) => piece.faces.map(patchOf));
  const byPlane = new Map<Plane, Patch[]>();
  for (const face of faces) byPlane.set(face.plane, [...(byPlane.get(face.plane) ?? []), face]);
  // A face against the face of another piece of the same solid is a seam: the planes are the same, turned round.
  return faces.flatMap((face) => {
    const against = byPlane.get(flip(face.plane)) ?? [];
    if (against.length === 0) return [face];
    const bare = against.reduce<readonly Polygon[]>(
      (rest, other) => rest.flatMap((polygon) => subtractPolygon(polygon, other.limits)),
      [face.polygon],
    );
    return bare.map((polygon) => patch(face.plane, face.normal, polygon));
  });
});

const patchOf = (face: Solid["pieces"][number]["faces"][number]): Patch =>
  patch(face.plane, normalOf(face), loopOf(face.vertices));

const patch = (plane: Plane, normal: Vec, polygon: Polygon): Patch => ({
  plane,
  normal,
  polygon,
  limits: edgeLimits(polygon, normal),
  ...bounds(polygon),
});
