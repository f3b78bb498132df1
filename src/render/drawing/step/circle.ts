/** What of lines and faces lies inside a circle of the page. */
import { circlePoint } from "../../../geometry/angle.ts";
import type { Spot } from "../drawing.ts";
import type { Segment } from "../plate.ts";

/** The run of a segment inside a circle. */
export function within([a, b]: Segment, [cx, cy]: Spot, radius: number): readonly Segment[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const [fx, fy] = [a[0] - cx, a[1] - cy];
  const [p, q, r] = [dx * dx + dy * dy, 2 * (fx * dx + fy * dy), fx * fx + fy * fy - radius * radius];
  const root = q * q - 4 * p * r;
  if (p === 0 || root <= 0) return [];
  const from = Math.max(0, (-q - Math.sqrt(root)) / (2 * p));
  const to = Math.min(1, (-q + Math.sqrt(root)) / (2 * p));
  if (from >= to) return [];
  const on = (t: number): Spot => [a[0] + dx * t, a[1] + dy * t];
  return [[on(from), on(to)]];
}

/** Outward normals of the sides of a polygon that stands for a circle. */
export const NORMALS: readonly Spot[] = Array.from({ length: 48 }, (_, i) => circlePoint(i, 48));

/** A convex polygon, cut by the sides of a circle's polygon. */
export function insideCircle(polygon: readonly Spot[], [cx, cy]: Spot, radius: number): readonly Spot[] {
  let rest = polygon;
  for (const [nx, ny] of NORMALS) {
    const depth = ([x, y]: Spot): number => (x - cx) * nx + (y - cy) * ny - radius;
    const out: Spot[] = [];
    rest.forEach((p, i) => {
      const q = rest[(i + 1) % rest.length] as Spot;
      const [s, t] = [depth(p), depth(q)];
      if (s <= 0) out.push(p);
      if (s * t < 0) out.push([p[0] + ((q[0] - p[0]) * s) / (s - t), p[1] + ((q[1] - p[1]) * s) / (s - t)]);
    });
    rest = out;
  }
  return rest;
}
