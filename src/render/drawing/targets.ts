/** Where a leader may end on a part: in the middle of what is seen of it, the largest pieces first. */
import type { Point2, VisibleFace } from "../../geometry/types.ts";
import type { Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";

/** On paper, in square points. */
export const seenArea = (faces: readonly VisibleFace[], id: string, scale: number): number =>
  faces.filter((f) => f.id === id).reduce((sum, f) => sum + f.polygons.reduce((s, p) => s + polygonArea(p), 0), 0) *
  scale *
  scale;

const MOST = 4;

export function targetsOn(faces: readonly VisibleFace[], id: string, fit: Fit): readonly Spot[] {
  return faces
    .filter((f) => f.id === id)
    .flatMap((f) => f.polygons)
    .map((polygon) => ({ polygon, area: polygonArea(polygon) }))
    .sort((a, b) => b.area - a.area)
    .slice(0, MOST)
    .flatMap(({ polygon }) => {
      const middle = centre(polygon);
      // Long pieces offer their ends too, which lie nearer to the edge of the picture.
      const far = [...polygon].sort((p, q) => distance(q, middle) - distance(p, middle)).slice(0, 2);
      return [
        middle,
        ...far.map((p): Point2 => [middle[0] + (p[0] - middle[0]) * 0.55, middle[1] + (p[1] - middle[1]) * 0.55]),
      ];
    })
    .map(fit.page);
}

export const polygonArea = (polygon: readonly Point2[]): number =>
  Math.abs(
    polygon.reduce((sum, [a, b], i) => {
      const [c, d] = polygon[(i + 1) % polygon.length] ?? [a, b];
      return sum + a * d - b * c;
    }, 0),
  ) / 2;

const distance = (p: Point2, q: Point2): number => (p[0] - q[0]) * (p[0] - q[0]) + (p[1] - q[1]) * (p[1] - q[1]);

const centre = (polygon: readonly Point2[]): Point2 => {
  const sum = polygon.reduce(([a, b], [u, v]) => [a + u, b + v] as const, [0, 0] as const);
  return [sum[0] / polygon.length, sum[1] / polygon.length];
};
