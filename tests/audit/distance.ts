/** How far convex bodies lie apart: the nearest of corner to face and edge to edge. */
import { type Convex, type Face, pairs } from "./convex.ts";
import { penetration } from "./overlap.ts";
import { along, apart, cross, dot, minus, type V3, ZERO } from "./vector.ts";

/** In mm; zero where they overlap. */
export function distance(a: Convex, b: Convex): number {
  if (penetration(a, b, ZERO, 0) > 0) return 0;
  const corners = [...toFaces(a.points, b.faces), ...toFaces(b.points, a.faces)];
  const edges = edgesOf(a).flatMap((e) => edgesOf(b).map((f) => betweenSegments(e, f)));
  return Math.min(...corners, ...edges);
}

type Segment = readonly [V3, V3];
const edgesOf = (body: Convex): Segment[] => body.faces.flatMap((face) => pairs(face.ring));

/** The heights of points that stand straight above a face. */
const toFaces = (points: readonly V3[], faces: readonly Face[]): number[] =>
  faces.flatMap(({ normal, offset, ring }) =>
    points
      .filter((p) => pairs(ring).every(([q, r]) => dot(cross(minus(r, q), minus(p, q)), normal) >= 0))
      .map((p) => dot(p, normal) - offset)
      .filter((height) => height >= 0),
  );

function betweenSegments([p, q]: Segment, [r, s]: Segment): number {
  const [d, e, w] = [minus(q, p), minus(s, r), minus(p, r)];
  const [a, b, c] = [dot(d, d), dot(d, e), dot(e, e)];
  const within = (t: number) => Math.min(1, Math.max(0, t));
  const toFirst = (at: V3) => within(dot(minus(at, p), d) / a);
  const toSecond = (at: V3) => within(dot(minus(at, r), e) / c);
  const denominator = a * c - b * b;
  let t = denominator < 1e-12 * a * c ? 0 : within((b * dot(e, w) - c * dot(d, w)) / denominator);
  const u = toSecond(along(p, d, t));
  t = toFirst(along(r, e, u));
  return apart(along(p, d, t), along(r, e, u));
}
