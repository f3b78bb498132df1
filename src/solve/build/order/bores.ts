/** Whether holes meet: each stage of a hole is a cylinder. */

import type { Vec } from "../../../geometry/index.ts";
import { cross, dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import { TOLERANCE } from "../../../units/index.ts";
import type { Hole } from "../../design.ts";
import { once } from "../once.ts";
import { cylindersOf } from "./slots.ts";

interface Bore {
  readonly centre: Vec;
  readonly axis: Vec;
  readonly half: number;
  readonly radius: number;
  /** No point of it is farther than this from its centre. */
  readonly reach: number;
}

/** Closer than touching. Holes of different parts never meet, and spare ones give way. */
export const holesMeet = (a: Hole, b: Hole): boolean => !a.spare && !b.spare && crowd(a, b);

const crowd = (a: Hole, b: Hole): boolean =>
  a.part === b.part && boresOf(a).some((p) => boresOf(b).some((q) => meet(p, q)));

/** All holes but the spare ones that come nearer to another than twice its diameter, from middle to middle, or that meet one from the other side. */
export function withRoom(holes: readonly Hole[]): readonly Hole[] {
  const kept = holes.filter(({ spare }) => !spare);
  for (const hole of holes)
    if (hole.spare && !kept.some((other) => crowd(hole, other) || isNear(hole, other))) kept.push(hole);
  const all = new Set(kept);
  return holes.filter((hole) => all.has(hole));
}

function isNear(a: Hole, b: Hole): boolean {
  if (a.part !== b.part || dot(a.direction, b.direction) < 0.99) return false;
  const [p, q] = [cylindersOf(a)[0], cylindersOf(b)[0]];
  return (
    p !== undefined &&
    q !== undefined &&
    norm(minus(p.mouth, q.mouth)) < 2 * Math.max(p.diameter, q.diameter) - TOLERANCE
  );
}

const boresOf = once((hole: Hole): readonly Bore[] =>
  cylindersOf(hole).map(({ mouth, diameter, depth }) => {
    const [half, radius] = [depth / 2, diameter / 2];
    const centre = plus(mouth, times(hole.direction, half));
    return { centre, axis: hole.direction, half, radius, reach: Math.sqrt(half * half + radius * radius) };
  }),
);

/** Cylinders are apart where some direction parts them; those tried find all but a sliver at rims that nearly touch. */
function meet(p: Bore, q: Bore): boolean {
  const between = minus(q.centre, p.centre);
  if (norm(between) > p.reach + q.reach) return false;
  const radial = (axis: Vec): Vec => minus(between, times(axis, dot(between, axis)));
  const directions = [p.axis, q.axis, cross(p.axis, q.axis), radial(p.axis), radial(q.axis), nearest(p, q), between];
  return !directions.some((direction) => {
    const size = norm(direction);
    if (size < 1e-9) return false;
    const unit = times(direction, 1 / size);
    return Math.abs(dot(between, unit)) - support(p, unit) - support(q, unit) > -TOLERANCE;
  });
}

/** How far a cylinder reaches from its centre along a unit vector. */
function support({ axis, half, radius }: Bore, unit: Vec): number {
  const along = dot(axis, unit);
  return half * Math.abs(along) + radius * Math.sqrt(Math.max(0, 1 - along * along));
}

/** From the axis of p to the axis of q where they come nearest. */
function nearest(p: Bore, q: Bore): Vec {
  const between = minus(q.centre, p.centre);
  const cosine = dot(p.axis, q.axis);
  const [along, back] = [dot(between, p.axis), dot(between, q.axis)];
  const slant = 1 - cosine * cosine;
  const start = slant < 1e-12 ? 0 : clamp((along - back * cosine) / slant, p.half);
  const t = clamp(start * cosine - back, q.half);
  const s = clamp(t * cosine + along, p.half);
  return minus(plus(q.centre, times(q.axis, t)), plus(p.centre, times(p.axis, s)));
}

const clamp = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));
