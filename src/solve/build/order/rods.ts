/** Round rods and bores, and whether two of them meet. */
import type { Vec } from "../../../geometry/index.ts";
import { cross, dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import { TOLERANCE } from "../../../units/index.ts";

/** A round rod or bore. */
export interface Rod {
  readonly centre: Vec;
  readonly axis: Vec;
  readonly half: number;
  readonly radius: number;
  /** No point of it is farther than this from its centre. */
  readonly reach: number;
}

/** From the middle of one end along a unit vector; lengths as `toNumber` gives them. */
export function rodOf(from: Vec, axis: Vec, radius: number, length: number): Rod {
  const half = length / 2;
  return { centre: plus(from, times(axis, half)), axis, half, radius, reach: Math.sqrt(half * half + radius * radius) };
}

/** Cylinders are apart where some direction parts them; those tried find all but a sliver at rims that nearly touch. */
export function meet(p: Rod, q: Rod): boolean {
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
function support({ axis, half, radius }: Rod, unit: Vec): number {
  const along = dot(axis, unit);
  return half * Math.abs(along) + radius * Math.sqrt(Math.max(0, 1 - along * along));
}

/** From the axis of p to the axis of q where they come nearest. */
function nearest(p: Rod, q: Rod): Vec {
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
