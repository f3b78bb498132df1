/** How much of a circle of the page is seen of a part. */
import type { VisibleFace } from "../../../geometry/types.ts";
import type { Spot } from "../drawing.ts";
import type { Fit } from "../fit.ts";

/** Places in a circle of radius 1, evenly spread. */
const PLACES: readonly Spot[] = [-4, -3, -2, -1, 0, 1, 2, 3, 4].flatMap((i) =>
  [-4, -3, -2, -1, 0, 1, 2, 3, 4].flatMap((j): Spot[] => (i * i + j * j <= 20 ? [[i / 4.5, j / 4.5]] : [])),
);

/** Share of the circle, 0 to 1, that the faces with the id cover. */
export function shareOf(id: string, faces: readonly VisibleFace[], fit: Fit, at: Spot, radius: number): number {
  const polygons = faces
    .filter((face) => face.id === id)
    .flatMap((face) => face.polygons.map((polygon) => polygon.map(fit.page)))
    .filter((polygon) => isNear(polygon, at, radius));
  const inside = PLACES.filter(([dx, dy]) => {
    const spot: Spot = [at[0] + dx * radius, at[1] + dy * radius];
    return polygons.some((polygon) => holds(polygon, spot));
  });
  return inside.length / PLACES.length;
}

/** Whether the box around a polygon meets that around a circle: most polygons of a picture lie far from it. */
const isNear = (polygon: readonly Spot[], at: Spot, radius: number): boolean =>
  ([0, 1] as const).every(
    (i) => polygon.some((spot) => spot[i] >= at[i] - radius) && polygon.some((spot) => spot[i] <= at[i] + radius),
  );

/** Whether a spot lies in a convex polygon. */
export function holds(polygon: readonly Spot[], [x, y]: Spot): boolean {
  let [left, right] = [false, false];
  polygon.forEach(([x1, y1], i) => {
    const [x2, y2] = polygon[(i + 1) % polygon.length] as Spot;
    const side = (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
    if (side > 0) left = true;
    if (side < 0) right = true;
  });
  return !(left && right);
}
