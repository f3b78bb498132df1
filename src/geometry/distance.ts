/** How far two solids are apart. */
import { convexOfPiece } from "./convex.ts";
import { height } from "./plane.ts";
import { edgeLimits, loopOf } from "./polygon.ts";
import { depth } from "./separation.ts";
import type { Piece, Solid, Vec } from "./types.ts";
import { cross, dot, minus, norm, plus, times } from "./vec.ts";
import { position } from "./vertex.ts";

/** The least distance between two solids in units; 0 when they touch or overlap, Infinity when one is empty. */
export function distance(a: Solid, b: Solid): number {
  let least = Infinity;
  for (const p of a.pieces) {
    if (boundsDistance(p, b) >= least) continue;
    for (const q of b.pieces) if (boundsDistance(p, q) < least) least = Math.min(least, piecesDistance(p, q));
  }
  return least;
}

interface Bounds {
  readonly low: Vec;
  readonly high: Vec;
}

/** The distance of bounding boxes: never above the true one. */
function boundsDistance(p: Bounds, q: Bounds): number {
  const gap = (i: 0 | 1 | 2): number => Math.max(0, p.low[i] - q.high[i], q.low[i] - p.high[i]);
  return norm([gap(0), gap(1), gap(2)]);
}

/** The nearest points of convex bodies that are apart are a corner and a face, or two edges. */
function piecesDistance(p: Piece, q: Piece): number {
  const [one, other] = [convexOfPiece(p), convexOfPiece(q)];
  if (one.upright && other.upright) return boundsDistance(p, q);
  if (depth(one, other) > 0) return 0;
  const fromCorners = Math.min(cornersToFaces(p, q), cornersToFaces(q, p));
  const others = edgesOf(q);
  return edgesOf(p).reduce(
    (so, edge) => others.reduce((least, other) => Math.min(least, edgeDistance(edge, other)), so),
    fromCorners,
  );
}

/** The least height of a corner of p above a face of q, among those that stand over one. */
function cornersToFaces(p: Piece, q: Piece): number {
  let least = Infinity;
  for (const face of q.faces) {
    const { a, b, c, norm: size } = face.plane;
    const limits = edgeLimits(loopOf(face.vertices), [a / size, b / size, c / size]);
    for (const at of p.vertices.map(position)) {
      const above = height(face.plane, at);
      if (above >= 0 && above < least && limits.every(({ normal, d }) => dot(normal, at) <= d)) least = above;
    }
  }
  return least;
}

type Segment = readonly [Vec, Vec];

/** Every edge, once from either side. */
const edgesOf = (piece: Piece): readonly Segment[] =>
  piece.faces.flatMap(({ vertices }) => {
    const loop = loopOf(vertices);
    return loop.map((at, i): Segment => [at, loop[(i + 1) % loop.length] ?? at]);
  });

/** The distance of two segments: between the lines where that falls inside both, else from an end of one to the other. */
function edgeDistance([p, p2]: Segment, [q, q2]: Segment): number {
  const [u, v, w] = [minus(p2, p), minus(q2, q), minus(q, p)];
  const across = cross(u, v);
  const square = dot(across, across);
  if (square > 1e-18 * dot(u, u) * dot(v, v)) {
    const s = dot(cross(w, v), across) / square;
    const t = dot(cross(w, u), across) / square;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) return Math.abs(dot(w, across)) / Math.sqrt(square);
  }
  return Math.min(
    pointDistance(p, [q, q2]),
    pointDistance(p2, [q, q2]),
    pointDistance(q, [p, p2]),
    pointDistance(q2, [p, p2]),
  );
}

function pointDistance(at: Vec, [p, p2]: Segment): number {
  const u = minus(p2, p);
  const t = Math.min(1, Math.max(0, dot(minus(at, p), u) / dot(u, u)));
  return norm(minus(at, plus(p, times(u, t))));
}
