/** Vectors in doubles, millimetres. */
export type V3 = readonly [number, number, number];

export const ZERO: V3 = [0, 0, 0];
export const AXES: readonly V3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export const plus = (a: V3, b: V3): V3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: V3, k: number): V3 => [a[0] * k, a[1] * k, a[2] * k];
/** a + k·d */
export const along = (a: V3, d: V3, k: number): V3 => plus(a, times(d, k));
export const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: V3): number => Math.hypot(...a);
export const unit = (a: V3): V3 => times(a, 1 / size(a));
export const apart = (a: V3, b: V3): number => size(minus(a, b));
export const mean = (points: readonly V3[]): V3 => times(points.reduce(plus, ZERO), 1 / points.length);
export const isParallel = (a: V3, b: V3, within = 1e-6): boolean => size(cross(a, b)) <= within;

/** Two unit vectors square to n and to each other, so that u × v = n. */
export function basis(n: V3): readonly [V3, V3] {
  const away: V3 = Math.abs(n[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const u = unit(cross(away, n));
  return [u, cross(n, u)];
}

/** p turned about the axis through `at`, right-handed. */
export function turned(p: V3, at: V3, axis: V3, degrees: number): V3 {
  const [k, r, angle] = [unit(axis), minus(p, at), (degrees * Math.PI) / 180];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return plus(at, plus(plus(times(r, c), times(cross(k, r), s)), times(k, dot(k, r) * (1 - c))));
}
