/** Convex polygons in space, in doubles; corners counter-clockwise seen from the side that their normal points to. */
import type { Vec, Vertex } from "./types.ts";
import { cross, dot, minus, norm, plus, times, unit } from "./vec.ts";
import { position } from "./vertex.ts";

export type Polygon = readonly Vec[];

/** The half-space normal·p ≤ d. */
export interface Limit {
  readonly normal: Vec;
  readonly d: number;
}

/** The loop of a face in doubles; of corners that doubles can hardly tell apart only one is kept. */
export function loopOf(vertices: readonly Vertex[]): Polygon {
  const loop: Vec[] = [];
  for (const at of vertices.map(position)) {
    const [first, last] = [loop[0], loop[loop.length - 1]];
    if (first && last && (apart(at, first) < BLUR || apart(at, last) < BLUR)) continue;
    loop.push(at);
  }
  return loop.length < 3 ? [] : loop;
}

const apart = (u: Vec, v: Vec): number => norm(minus(u, v));

/** What lies inside a half-space; empty when nothing does. */
export function clipPolygon(polygon: Polygon, { normal, d }: Limit): Polygon {
  const heights = polygon.map((at) => level(dot(normal, at) - d));
  if (heights.every((h) => h <= 0)) return polygon;
  const kept = polygon.flatMap((u, i): Vec[] => {
    const j = (i + 1) % polygon.length;
    const [v, h, k] = [polygon[j], heights[i], heights[j]];
    if (!v || h === undefined || k === undefined) return [];
    const crossing = h * k < 0 ? [plus(u, times(minus(v, u), h / (h - k)))] : [];
    return h <= 0 ? [u, ...crossing] : crossing;
  });
  return kept.length < 3 ? [] : kept;
}

/** Clips by each limit in turn. */
export const clipAll = (polygon: Polygon, limits: readonly Limit[]): Polygon =>
  limits.reduce<Polygon>((rest, limit) => (rest.length === 0 ? rest : clipPolygon(rest, limit)), polygon);

/** The half-spaces along the edges of a polygon, square to its plane. */
export const edgeLimits = (polygon: Polygon, normal: Vec): readonly Limit[] =>
  polygon.map((u, i) => {
    const outward = unit(cross(minus(polygon[(i + 1) % polygon.length] ?? u, u), normal));
    return { normal: outward, d: dot(outward, u) };
  });

/** What of a polygon lies outside a convex region given by its limits, in convex polygons that do not overlap. */
export function subtractPolygon(polygon: Polygon, limits: readonly Limit[]): readonly Polygon[] {
  const left: Polygon[] = [];
  let rest = polygon;
  for (const limit of limits) {
    const outside = clipPolygon(rest, { normal: times(limit.normal, -1), d: -limit.d });
    if (!isSliver(outside)) left.push(outside);
    rest = clipPolygon(rest, limit);
    if (isSliver(rest)) return [polygon];
  }
  return left;
}

export const area = (polygon: Polygon): number => norm(twiceArea(polygon)) / 2;

/** The centre of area. */
export function centre(polygon: Polygon): Vec {
  const [origin] = polygon;
  if (!origin) return [0, 0, 0];
  const whole = twiceArea(polygon);
  const size = norm(whole);
  let moment: Vec = [0, 0, 0];
  eachTriangle(polygon, (u, v) => {
    const share = dot(cross(u, v), whole) / (size * size);
    moment = plus(moment, times(plus(u, v), share / 3));
  });
  return size > 0 ? plus(origin, moment) : origin;
}

/** Rounding is no height. */
const level = (h: number): number => (Math.abs(h) < BLUR ? 0 : h);

/** Too narrow to be more than rounding. */
export const isSliver = (polygon: Polygon): boolean => polygon.length < 3 || area(polygon) <= extent(polygon) * BLUR;

/** The longest way across the bounds of a polygon. */
export function extent(polygon: Polygon): number {
  const size = (i: 0 | 1 | 2): number => Math.max(...polygon.map((p) => p[i])) - Math.min(...polygon.map((p) => p[i]));
  return polygon.length === 0 ? 0 : norm([size(0), size(1), size(2)]);
}

function twiceArea(polygon: Polygon): Vec {
  let total: Vec = [0, 0, 0];
  eachTriangle(polygon, (u, v) => {
    total = plus(total, cross(u, v));
  });
  return total;
}

/** The triangles of a fan from the first corner, as the two sides that leave it. */
function eachTriangle(polygon: Polygon, visit: (u: Vec, v: Vec) => void): void {
  const [origin, ...others] = polygon;
  if (!origin) return;
  others.slice(1).forEach((corner, i) => {
    const before = others[i];
    if (before) visit(minus(before, origin), minus(corner, origin));
  });
}

// What doubles may be wrong by, in units, with room to spare; no limit of judgement.
const BLUR = 1e-3;
