/** How far one convex body must be shifted to be clear of another: separating axes. */
import type { Bounds, Convex } from "./convex.ts";
import type { Vec } from "./types.ts";
import { norm, times } from "./vec.ts";

const STILL: Vec = [0, 0, 0];

/**
 * The least shift, in units, that parts p from q; zero or less when they do not overlap. With `travel`, p stands for the whole of
 * what it passes through on the way along that vector. The shift is always across a face of one of them, or across one edge of each
 * (or an edge and the travel): the faces of the Minkowski sum. Stops early, with some value not above `enough`, when that is reached.
 */
export function depth(p: Convex, q: Convex, travel: Vec = STILL, enough = 0): number {
  let least = boundsDepth(p, q, travel);
  if (least <= enough) return least;
  const moves = travel[0] !== 0 || travel[1] !== 0 || travel[2] !== 0;
  const alongAxis = (travel[0] === 0 ? 1 : 0) + (travel[1] === 0 ? 1 : 0) + (travel[2] === 0 ? 1 : 0) >= 2;
  if (p.upright && q.upright && alongAxis) return least;
  // Asked millions of times in a plan: plain loops and numbers.
  for (const axis of p.slanting) {
    least = Math.min(least, depthAlong(axis[0], axis[1], axis[2], p, q, travel));
    if (least <= enough) return least;
  }
  for (const axis of q.slanting) {
    least = Math.min(least, depthAlong(axis[0], axis[1], axis[2], p, q, travel));
    if (least <= enough) return least;
  }
  if (moves) {
    const along = [times(travel, 1 / norm(travel))];
    least = depthAcross(along, p.edges, p, q, travel, least, enough);
    if (least <= enough) return least;
    least = depthAcross(along, q.edges, p, q, travel, least, enough);
    if (least <= enough) return least;
  }
  return depthAcross(p.edges, q.edges, p, q, travel, least, enough);
}

/** The same for bounding boxes: never below the true depth. */
export function boundsDepth(p: Bounds, q: Bounds, travel: Vec = STILL): number {
  return Math.min(boundsAlong(0, p, q, travel), boundsAlong(1, p, q, travel), boundsAlong(2, p, q, travel));
}

const boundsAlong = (i: 0 | 1 | 2, p: Bounds, q: Bounds, travel: Vec): number =>
  Math.min(p.high[i] + Math.max(0, travel[i]) - q.low[i], q.high[i] - p.low[i] - Math.min(0, travel[i]));

/** Across one of `some` and one of `others`, none where they are parallel: the least of these and of the `least` so far. */
function depthAcross(
  some: readonly Vec[],
  others: readonly Vec[],
  p: Convex,
  q: Convex,
  travel: Vec,
  so: number,
  enough: number,
): number {
  let least = so;
  for (const u of some)
    for (const v of others) {
      const x = u[1] * v[2] - u[2] * v[1];
      const y = u[2] * v[0] - u[0] * v[2];
      const z = u[0] * v[1] - u[1] * v[0];
      const size = Math.sqrt(x * x + y * y + z * z);
      if (size <= PARALLEL) continue;
      const k = 1 / size;
      least = Math.min(least, depthAlong(x * k, y * k, z * k, p, q, travel));
      if (least <= enough) return least;
    }
  return least;
}

function depthAlong(x: number, y: number, z: number, p: Convex, q: Convex, travel: Vec): number {
  const carried = x * travel[0] + y * travel[1] + z * travel[2];
  let pLow = Infinity;
  let pHigh = -Infinity;
  const ps = p.corners;
  for (let i = 0; i < ps.length; i += 3) {
    const at = x * (ps[i] as number) + y * (ps[i + 1] as number) + z * (ps[i + 2] as number);
    if (at < pLow) pLow = at;
    if (at > pHigh) pHigh = at;
  }
  let qLow = Infinity;
  let qHigh = -Infinity;
  const qs = q.corners;
  for (let i = 0; i < qs.length; i += 3) {
    const at = x * (qs[i] as number) + y * (qs[i + 1] as number) + z * (qs[i + 2] as number);
    if (at < qLow) qLow = at;
    if (at > qHigh) qHigh = at;
  }
  return Math.min(pHigh + Math.max(0, carried) - qLow, qHigh - pLow - Math.min(0, carried));
}

// Below this sine the direction across two edges is mostly rounding, and the normal of a face is as good.
const PARALLEL = 1e-6;
