/** Vertices: where three given planes meet. Never made from other vertices, so their digits do not grow with the cuts. */
import { gcd } from "./gcd.ts";
import type { Plane, Point, Vec, Vertex } from "./types.ts";

// A memo only: no result may depend on what it holds.
const known = new Map<string, Vertex>();

/** The point (X/W, Y/W, Z/W), W ≠ 0, kept once. */
export function homogeneous(X: bigint, Y: bigint, Z: bigint, W: bigint): Vertex {
  if (W < 0n) return homogeneous(-X, -Y, -Z, -W);
  if (W !== 1n) {
    const g = gcd(gcd(gcd(W, X), Y), Z);
    if (g > 1n) return homogeneous(X / g, Y / g, Z / g, W / g);
  }
  const key = `${X},${Y},${Z},${W}`;
  const found = known.get(key);
  if (found) return found;
  const made: Vertex = { X, Y, Z, W, x: quotient(X, W), y: quotient(Y, W), z: quotient(Z, W) };
  known.set(key, made);
  return made;
}

/** The vertex at an exact point. */
export function vertexAt([x, y, z]: Point): Vertex {
  return homogeneous(x.n * y.d * z.d, y.n * x.d * z.d, z.n * x.d * y.d, x.d * y.d * z.d);
}

/** Where three planes meet, by Cramer's rule. Throws a RangeError when they do not meet in one point. */
export function meet(p: Plane, q: Plane, r: Plane): Vertex {
  const ab = q.A * r.B - q.B * r.A;
  const ac = q.A * r.C - q.C * r.A;
  const bc = q.B * r.C - q.C * r.B;
  const W = p.A * bc - p.B * ac + p.C * ab;
  if (W === 0n) throw new RangeError("planes that do not meet in one point");
  const ad = q.A * r.D - q.D * r.A;
  const bd = q.B * r.D - q.D * r.B;
  const cd = q.C * r.D - q.D * r.C;
  const X = p.D * bc + p.B * cd - p.C * bd;
  const Y = p.C * ad - p.D * ac - p.A * cd;
  const Z = p.A * bd - p.B * ad + p.D * ab;
  return homogeneous(X, Y, Z, W);
}

/**
 * −1, 0 or 1 as the vertex is inside, on or outside the plane. Exact: doubles decide where they can, big integers elsewhere.
 * The doubles carry a relative error of at most 10 · 2^-53 of the sum of the terms, hence the filter of 16 · 2^-53.
 */
export function side(v: Vertex, p: Plane): -1 | 0 | 1 {
  const ax = p.a * v.x;
  const by = p.b * v.y;
  const cz = p.c * v.z;
  const s = ax + by + cz - p.d;
  const m = Math.abs(ax) + Math.abs(by) + Math.abs(cz) + Math.abs(p.d);
  if (s > m * FILTER) return 1;
  if (s < -m * FILTER) return -1;
  if (p.safe && m <= Number.MAX_SAFE_INTEGER && v.W === 1n) return s > 0 ? 1 : s < 0 ? -1 : 0;
  const exact = p.A * v.X + p.B * v.Y + p.C * v.Z - p.D * v.W;
  return exact > 0n ? 1 : exact < 0n ? -1 : 0;
}

const FILTER = 2 ** -49;

/** As doubles. */
export const position = (v: Vertex): Vec => [v.x, v.y, v.z];

/** The double nearest n / d to within three roundings. Digits beyond the range of doubles are dropped from both. */
function quotient(n: bigint, d: bigint): number {
  if (d === 1n) return Number(n);
  const whole = n / d;
  let [rest, by] = [n - whole * d, d];
  while (by > TOO_WIDE) [rest, by] = [rest >> 256n, by >> 256n];
  return Number(whole) + Number(rest) / Number(by);
}

const TOO_WIDE = 1n << 900n;
