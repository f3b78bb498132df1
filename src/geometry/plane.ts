/** Planes as whole numbers in lowest terms, each kept once. */
import { add, multiply, type Rational, rational, subtract } from "../units/rational.ts";
import { gcd } from "./gcd.ts";
import type { Plane, Point } from "./types.ts";

// Memos only: no result may depend on what they hold or in which order it came.
const known = new Map<string, Plane>();
const opposite = new WeakMap<Plane, Plane>();

const isSafe = (n: bigint): boolean => n <= Number.MAX_SAFE_INTEGER && n >= -Number.MAX_SAFE_INTEGER;

/** The half-space A·x + B·y + C·z ≤ D. Throws a RangeError when A, B and C are all zero: callers must have ruled that out. */
export function plane(A: bigint, B: bigint, C: bigint, D: bigint): Plane {
  const g = gcd(gcd(gcd(A, B), C), D);
  if (g > 1n) return plane(A / g, B / g, C / g, D / g);
  const key = `${A},${B},${C},${D}`;
  const found = known.get(key);
  if (found) return found;
  if (A === 0n && B === 0n && C === 0n) throw new RangeError("a plane needs a normal other than zero");
  const [a, b, c, d] = [Number(A), Number(B), Number(C), Number(D)];
  const safe = isSafe(A) && isSafe(B) && isSafe(C) && isSafe(D);
  const made: Plane = { A, B, C, D, a, b, c, d, safe, norm: Math.sqrt(a * a + b * b + c * c) };
  known.set(key, made);
  return made;
}

/** The same plane, its other side. */
export function flip(p: Plane): Plane {
  let other = opposite.get(p);
  if (!other) {
    other = plane(-p.A, -p.B, -p.C, -p.D);
    // Not the other way about: who asks may hold a copy, and the plane that is kept must not be taken for its other side.
    opposite.set(p, other);
  }
  return other;
}

/** The plane square to an axis at a coordinate; `outward` is the side that is outside. */
export function axisPlane(axis: 0 | 1 | 2, outward: 1 | -1, at: Rational): Plane {
  const n = outward === 1 ? at.d : -at.d;
  const d = outward === 1 ? at.n : -at.n;
  return plane(axis === 0 ? n : 0n, axis === 1 ? n : 0n, axis === 2 ? n : 0n, d);
}

/** The plane through a point with an outward normal in whole numbers. */
export function planeThrough(point: Point, normal: readonly [bigint, bigint, bigint]): Plane {
  const [A, B, C] = normal;
  const [x, y, z] = point;
  const { n, d } = add(add(multiply(x, rational(A)), multiply(y, rational(B))), multiply(z, rational(C)));
  return plane(A * d, B * d, C * d, n);
}

/** The plane through three points, outward by the right-hand rule from p to q to r. Throws a RangeError when they are in line. */
export function planeThroughPoints(p: Point, q: Point, r: Point): Plane {
  const u = difference(q, p);
  const v = difference(r, p);
  const minor = (i: 0 | 1 | 2, j: 0 | 1 | 2) => subtract(multiply(u[i], v[j]), multiply(u[j], v[i]));
  const normal = [minor(1, 2), minor(2, 0), minor(0, 1)] as const;
  const common = normal[0].d * normal[1].d * normal[2].d;
  const whole = (r: Rational): bigint => (r.n * common) / r.d;
  return planeThrough(p, [whole(normal[0]), whole(normal[1]), whole(normal[2])]);
}

/** The six planes of a box: low and high along x, then y, then z. */
export const boxPlanes = (low: Point, high: Point): readonly Plane[] =>
  ([0, 1, 2] as const).flatMap((axis) => [axisPlane(axis, -1, low[axis]), axisPlane(axis, 1, high[axis])]);

/** A total order by the exact coefficients. */
export function comparePlanes(p: Plane, q: Plane): number {
  const order = (a: bigint, b: bigint) => (a < b ? -1 : a > b ? 1 : 0);
  return order(p.A, q.A) || order(p.B, q.B) || order(p.C, q.C) || order(p.D, q.D);
}

/** How far outside the plane a point lies, in units; negative inside. */
export const height = (p: Plane, at: readonly [number, number, number]): number =>
  (p.a * at[0] + p.b * at[1] + p.c * at[2] - p.d) / p.norm;

const difference = (p: Point, q: Point): Point => [subtract(p[0], q[0]), subtract(p[1], q[1]), subtract(p[2], q[2])];
