/** How far one convex body must be shifted to be clear of another: separating axes. */
import type { Bounds, Convex } from "./convex.ts";
import type { Vec } from "./types.ts";
import { cross, dot, norm, times } from "./vec.ts";

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
  // Asked millions of times in a plan: plain loops.
  for (const { normals } of [p, q])
    for (const axis of normals) {
      least = Math.min(least, depthAlong(axis, p, q, travel));
      if (least <= enough) return least;
    }
  if (moves) {
    const along = times(travel, 1 / norm(travel));
    for (const { edges } of [p, q])
      for (const edge of edges) {
        least = Math.min(least, depthAcross(along, edge, p, q, travel));
        if (least <= enough) return least;
      }
  }
  for (const u of p.edges)
    for (const v of q.edges) {
      least = Math.min(least, depthAcross(u, v, p, q, travel));
      if (least <= enough) return least;
    }
  return least;
}

/** The same for bounding boxes: never below the true depth. */
export function boundsDepth(p: Bounds, q: Bounds, travel: Vec = STILL): number {
  return Math.min(boundsAlong(0, p, q, travel), boundsAlong(1, p, q, travel), boundsAlong(2, p, q, travel));
}

const boundsAlong = (i: 0 | 1 | 2, p: Bounds, q: Bounds, travel: Vec): number =>
  Math.min(p.high[i] + Math.max(0, travel[i]) - q.low[i], q.high[i] - p.low[i] - Math.min(0, travel[i]));

/** Across two edges; endless where they are parallel. */
function depthAcross(u: Vec, v: Vec, p: Convex, q: Convex, travel: Vec): number {
  const axis = cross(u, v);
  const size = norm(axis);
  return size > PARALLEL ? depthAlong(times(axis, 1 / size), p, q, travel) : Infinity;
}

function depthAlong(axis: Vec, p: Convex, q: Convex, travel: Vec): number {
  const carried = dot(axis, travel);
  let pLow = Infinity;
  let pHigh = -Infinity;
  for (let i = 0; i < p.points.length; i += 1) {
    const at = dot(axis, p.points[i] as Vec);
    if (at < pLow) pLow = at;
    if (at > pHigh) pHigh = at;
  }
  let qLow = Infinity;
  let qHigh = -Infinity;
  for (let i = 0; i < q.points.length; i += 1) {
    const at = dot(axis, q.points[i] as Vec);
    if (at < qLow) qLow = at;
    if (at > qHigh) qHigh = at;
  }
  return Math.min(pHigh + Math.max(0, carried) - qLow, qHigh - pLow - Math.min(0, carried));
}

// Below this sine the direction across two edges is mostly rounding, and the normal of a face is as good.
const PARALLEL = 1e-6;
