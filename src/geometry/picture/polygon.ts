/** Convex polygons in space, cut by half-spaces in doubles: for faces that are drawn, never for judging. */
import type { Vec } from "../types.ts";
import { cross, dot, minus, norm, plus, times } from "../vec.ts";
import type { HalfSpace } from "./shadow.ts";

export type Polygon = readonly Vec[];

/** Corners within this of the cutting plane lie on it; units of 1/16 µm. */
const ON = 0.5;

/** The part of the polygon inside (or, `outside`, beyond) the half-space; null where nothing with an area is left. */
export function cut(polygon: Polygon, { normal, d }: HalfSpace, outside = false): Polygon | null {
  const sign = outside ? -1 : 1;
  const at: number[] = [];
  let [within, beyond] = [false, false];
  for (const p of polygon) {
    const s = sign * (dot(normal, p) - d);
    if (s < -ON) within = true;
    else if (s > ON) beyond = true;
    at.push(Math.abs(s) <= ON ? 0 : s);
  }
  if (!within) return null;
  if (!beyond) return polygon;
  const out: Vec[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const j = i + 1 < polygon.length ? i + 1 : 0;
    const p = polygon[i] as Vec;
    const a = at[i] as number;
    const b = at[j] as number;
    if (a <= 0) out.push(p);
    if (a * b < 0) out.push(plus(p, times(minus(polygon[j] as Vec, p), a / (a - b))));
  }
  return out.length >= 3 ? out : null;
}

/** Whether one side of the body has all of the polygon beyond it: then they do not meet. */
export function isApart(polygon: Polygon, body: readonly HalfSpace[]): boolean {
  for (const { normal, d } of body) {
    let beyond = true;
    for (let i = 0; beyond && i < polygon.length; i += 1) beyond = dot(normal, polygon[i] as Vec) - d >= -ON;
    if (beyond) return true;
  }
  return false;
}

/** The polygon minus a convex body, in convex fragments; whole where they do not meet. */
export function minusConvex(polygon: Polygon, body: readonly HalfSpace[]): readonly Polygon[] {
  if (isApart(polygon, body)) return [polygon];
  const cuts: { readonly from: Polygon; readonly half: HalfSpace }[] = [];
  let rest = polygon;
  for (const half of body) {
    const inside = cut(rest, half);
    if (!inside) return [polygon];
    if (inside !== rest) cuts.push({ from: rest, half });
    rest = inside;
  }
  return cuts.map(({ from, half }) => cut(from, half, true)).filter((beyond) => beyond !== null);
}

/** In square units. */
export function area(polygon: Polygon): number {
  const [first, ...others] = polygon;
  if (!first) return 0;
  let sum: Vec = [0, 0, 0];
  others.forEach((p, i) => {
    const q = others[i + 1];
    if (q) sum = plus(sum, cross(minus(p, first), minus(q, first)));
  });
  return norm(sum) / 2;
}
