/** Convex bodies clipped by planes and taken from each other. */
import { type Convex, distinct, fromRings, pairs, volume } from "./convex.ts";
import { cross, dot, mean, minus, plus, times, unit, type V3 } from "./vector.ts";

/** The part of the body where normal · p ≤ offset; undefined if there is none. */
export function clipped(body: Convex, normal: V3, offset: number): Convex | undefined {
  const height = (p: V3) => dot(p, normal) - offset;
  if (body.points.every((p) => height(p) <= 1e-9)) return body;
  if (body.points.every((p) => height(p) >= -1e-9)) return undefined;
  const rings = body.faces.map(({ ring }) => clippedRing(ring, height)).filter((ring) => ring.length > 2);
  const rim = distinct(rings.flat().filter((p) => Math.abs(height(p)) < 1e-7));
  if (rim.length > 2) rings.push(around(rim, normal));
  return fromRings(rings);
}

export function clippedRing(ring: readonly V3[], height: (p: V3) => number): V3[] {
  return pairs(ring).flatMap(([a, b]) => {
    const [h, k] = [height(a), height(b)];
    const crossing = (h < 0 && k > 0) || (h > 0 && k < 0) ? [plus(a, times(minus(b, a), h / (h - k)))] : [];
    return h <= 0 ? [a, ...crossing] : crossing;
  });
}

/** What is left of a body outside all the others, in convex pieces. */
export function outside(body: Convex, others: readonly Convex[]): Convex[] {
  const [next, ...more] = others;
  if (next === undefined) return [body];
  const misses = next.faces.some(({ normal, offset }) => body.points.every((p) => dot(p, normal) >= offset));
  if (misses) return outside(body, more);
  const left: Convex[] = [];
  let rest: Convex | undefined = body;
  for (const { normal, offset } of next.faces) {
    if (rest === undefined) break;
    const beyond = clipped(rest, times(normal, -1), -offset);
    if (beyond !== undefined && volume(beyond) > 1e-9) left.push(...outside(beyond, more));
    rest = clipped(rest, normal, offset);
  }
  return left;
}

/** The body with each face moved out by a distance. */
export const grown = (body: Convex, by: number): Convex => ({
  ...body,
  faces: body.faces.map((face) => ({ ...face, offset: face.offset + by })),
  low: minus(body.low, [by, by, by]),
  high: plus(body.high, [by, by, by]),
});

/** Points of one plane in their order around its normal. */
function around(points: readonly V3[], normal: V3): V3[] {
  const middle = mean(points);
  const first = unit(minus(points[0] ?? middle, middle));
  const second = cross(normal, first);
  const angle = (p: V3) => Math.atan2(dot(minus(p, middle), second), dot(minus(p, middle), first));
  return [...points].sort((p, q) => angle(p) - angle(q));
}
