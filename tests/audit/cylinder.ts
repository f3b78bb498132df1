/** Cylinders with flat ends: holes, dowels, and the room that a tool needs. */
import { clipped } from "./clip.ts";
import { type Convex, fromRings } from "./convex.ts";
import { TOLERANCE } from "./overlap.ts";
import { along, basis, dot, plus, times, type V3 } from "./vector.ts";

export interface Cylinder {
  readonly from: V3;
  /** Of length 1. */
  readonly axis: V3;
  readonly length: number;
  readonly radius: number;
}

/**
 * Whether a body reaches into the cylinder beyond the tolerance. The body between the two ends is looked at along the axis:
 * it is in the way if its shadow comes nearer to the axis than the radius.
 */
export function hits(cylinder: Cylinder, body: Convex): boolean {
  const { from, axis, length, radius } = cylinder;
  if (!isNear(cylinder, body)) return false;
  const start = dot(from, axis);
  const lower = clipped(body, times(axis, -1), -(start + TOLERANCE));
  const between = lower && clipped(lower, axis, start + length - TOLERANCE);
  if (between === undefined) return false;
  const [u, v] = basis(axis);
  const shadow = between.points.map((p) => [dot(p, u) - dot(from, u), dot(p, v) - dot(from, v)] as const);
  return distanceFromOrigin(hull(shadow)) < radius - TOLERANCE;
}

const isNear = ({ from, axis, length, radius }: Cylinder, { low, high }: Convex): boolean =>
  ([0, 1, 2] as const).every((i) => {
    const ends = [from[i], from[i] + axis[i] * length];
    const rim = radius * Math.sqrt(Math.max(0, 1 - axis[i] * axis[i]));
    return Math.min(...ends) - rim < high[i] && Math.max(...ends) + rim > low[i];
  });

/** The cylinder as a prism of n sides that lies within it. */
export function prism({ from, axis, length, radius }: Cylinder, n = 64): Convex {
  const [u, v] = basis(axis);
  const ring = Array.from({ length: n }, (_, i): V3 => {
    const angle = (2 * Math.PI * i) / n;
    return plus(from, plus(times(u, radius * Math.cos(angle)), times(v, radius * Math.sin(angle))));
  });
  const top = ring.map((p) => along(p, axis, length));
  const next = (list: readonly V3[], i: number) => list[(i + 1) % n] ?? from;
  const sides = ring.map((p, i) => [p, next(ring, i), next(top, i), top[i] ?? from]);
  return fromRings([[...ring].reverse(), top, ...sides]);
}

type Point2 = readonly [number, number];
const turn = (o: Point2, a: Point2, b: Point2) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Counter-clockwise, by the chain of turns from left to right and back. */
function hull(points: readonly Point2[]): Point2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (from: readonly Point2[]): Point2[] => {
    const kept: Point2[] = [];
    for (const p of from) {
      for (;;) {
        const [a, b] = kept.slice(-2);
        if (a === undefined || b === undefined || turn(a, b, p) > 0) break;
        kept.pop();
      }
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** Zero inside the hull. */
function distanceFromOrigin(ring: readonly Point2[]): number {
  const sides = ring.map((p, i) => [p, ring[(i + 1) % ring.length] ?? p] as const);
  if (ring.length > 2 && sides.every(([a, b]) => turn(a, b, [0, 0]) >= 0)) return 0;
  return Math.min(...sides.map(([a, b]) => distanceToSegment(a, b)));
}

function distanceToSegment(a: Point2, b: Point2): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dy * dy;
  const t = squared === 0 ? 0 : Math.min(1, Math.max(0, -(a[0] * dx + a[1] * dy) / squared));
  return Math.hypot(a[0] + t * dx, a[1] + t * dy);
}
