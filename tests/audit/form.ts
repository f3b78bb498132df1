/** Promise 0: the solids are what the record says of them. */
import { pairs, ringVector } from "./convex.ts";
import { bounds, type Model, near, pairsOf } from "./model.ts";
import { penetration, TOLERANCE } from "./overlap.ts";
import type { Piece } from "./record.ts";
import { apart, dot, minus, size, times, type V3, ZERO } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* form(model: Model): Violations {
  const { record } = model;
  for (const body of [...record.parts, ...record.hardware]) {
    for (const piece of body.solids) {
      if (!isClosed(piece)) yield violation("pieces are closed", body.id, "a piece has an edge without its other side");
      else if (!isConvex(piece)) yield violation("pieces are convex", body.id, "a piece has a point outside a face");
    }
    for (const [a, b] of pairsOf(model.solid(body.id)))
      if (penetration(a, b) > TOLERANCE)
        yield violation("pieces of a part do not overlap", body.id, "two of its pieces overlap");
  }
  const [low, high] = bounds(record.parts.flatMap((part) => model.solid(part.id)));
  const same = (a: V3, b: V3) => a.every((value, i) => near(value, b[i] ?? 0));
  if (!same(low, ZERO) || !same(low, record.bounds.min) || !same(high, record.bounds.max))
    yield violation("bounds are those of the parts", "bounds", `the parts reach from ${low} to ${high}`);
}

/** Every edge is walked once each way: the faces close, and all look the same way out. */
function isClosed({ points, faces }: Piece): boolean {
  const edges = faces.flatMap((face) => face.map((from, i) => `${from} ${face[(i + 1) % face.length]}`));
  const reversed = (edge: string) => edge.split(" ").reverse().join(" ");
  const known = new Set(edges);
  return (
    faces.length >= 4 &&
    faces.every((face) => face.length >= 3 && face.every((i) => points[i] !== undefined)) &&
    known.size === edges.length &&
    edges.every((edge) => known.has(reversed(edge)))
  );
}

/** What printing to a millionth does to a coordinate, with something to spare. */
const PRINTED = 2e-6;

/** No point lies outside a face by more than the printing of the face's corners can make it seem. */
function isConvex({ points, faces }: Piece): boolean {
  const reach = Math.max(...points.flatMap((p) => points.map((q) => apart(p, q))));
  return faces.every((face) => {
    const ring = face.map((i) => points[i] ?? ZERO);
    const vector = ringVector(ring);
    const area = size(vector) / 2;
    if (area === 0) return true;
    const around = pairs(ring).reduce((so, [a, b]) => so + apart(a, b), 0);
    const blur = PRINTED * (1 + (reach * around) / area);
    const normal = times(vector, 1 / size(vector));
    return points.every((p) => dot(minus(p, ring[0] ?? ZERO), normal) <= blur);
  });
}
