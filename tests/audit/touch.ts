/** Where two parts face each other closely enough to touch. */

import { clippedRing } from "./clip.ts";
import { type Convex, type Face, pairs, ringVector } from "./convex.ts";
import { TOLERANCE } from "./overlap.ts";
import { along, cross, dot, mean, minus, plus, times, unit, type V3, ZERO } from "./vector.ts";

export interface Touch {
  /** Out of the first part. */
  readonly normal: V3;
  readonly centre: V3;
  readonly area: number;
  /** The widest gap between the two faces within the area. */
  readonly gap: number;
}

/** All pairs of facing faces that lie at most `reach` apart and overlap seen square on. */
export function touches(a: readonly Convex[], b: readonly Convex[], reach: number): Touch[] {
  return a.flatMap((p) =>
    b
      .filter((q) => near(p, q, reach))
      .flatMap((q) => p.faces.flatMap((f) => q.faces.flatMap((g) => facing(f, g, reach)))),
  );
}

const near = (a: Convex, b: Convex, reach: number): boolean =>
  ([0, 1, 2] as const).every((i) => a.low[i] <= b.high[i] + reach && b.low[i] <= a.high[i] + reach);

function facing(f: Face, g: Face, reach: number): Touch[] {
  if (dot(f.normal, g.normal) > -0.999) return [];
  const onto = (p: V3): V3 => along(p, f.normal, f.offset - dot(p, f.normal));
  let shared: readonly V3[] = g.ring.map(onto);
  for (const [p, q] of pairs(f.ring)) {
    const out = cross(minus(q, p), f.normal);
    shared = clippedRing(shared, (at) => dot(minus(at, p), out));
  }
  const vector = ringVector(shared);
  const area = Math.sqrt(dot(vector, vector)) / 2;
  const gaps = shared.map((p) => dot(p, g.normal) - g.offset);
  const fits = gaps.every((gap) => gap >= -TOLERANCE && gap <= reach);
  return area < 1e-6 || !fits ? [] : [{ normal: f.normal, centre: centreOf(shared), area, gap: Math.max(...gaps) }];
}

/** Touches in one plane taken together: their area, and the centre of it. */
export function joined(parts: readonly Touch[]): Touch | undefined {
  const [first] = parts;
  if (first === undefined) return undefined;
  const area = parts.reduce((so, part) => so + part.area, 0);
  const moment = parts.reduce<V3>((so, part) => plus(so, times(part.centre, part.area)), ZERO);
  return { ...first, area, centre: times(moment, 1 / area), gap: Math.max(...parts.map((part) => part.gap)) };
}

/** The centre of a convex ring's area. */
function centreOf(ring: readonly V3[]): V3 {
  const from = mean(ring);
  const normal = unit(ringVector(ring));
  let [total, moment] = [0, ZERO];
  for (const [p, q] of pairs(ring)) {
    const area = dot(cross(minus(p, from), minus(q, from)), normal) / 2;
    total += area;
    moment = plus(moment, times(plus(plus(from, p), q), area / 3));
  }
  return times(moment, 1 / total);
}
