/** Convex bodies, made from a record's pieces. */
import type { Piece } from "./record.ts";
import { cross, dot, mean, minus, plus, unit, type V3, ZERO } from "./vector.ts";

export interface Face {
  readonly normal: V3;
  /** normal · p ≤ offset for every point of the body. */
  readonly offset: number;
  readonly ring: readonly V3[];
}
export interface Convex {
  readonly points: readonly V3[];
  readonly faces: readonly Face[];
  /** Directions of the faces and of the edges, each once, either way round. */
  readonly normals: readonly V3[];
  readonly edges: readonly V3[];
  readonly low: V3;
  readonly high: V3;
}

/** Twice the area of a ring, as a vector along its normal. */
export const ringVector = (ring: readonly V3[]): V3 => {
  const from = ring[0] ?? ZERO;
  return pairs(ring).reduce<V3>((so, [a, b]) => plus(so, cross(minus(a, from), minus(b, from))), ZERO);
};
export const pairs = (ring: readonly V3[]): (readonly [V3, V3])[] =>
  ring.map((p, i) => [p, ring[(i + 1) % ring.length] ?? p]);

export const convexOf = (piece: Piece): Convex =>
  fromRings(piece.faces.map((face) => face.map((i) => piece.points[i] ?? ZERO)));

/** A body from its faces, counter-clockwise from outside. Faces too small to have a direction are left out. */
export function fromRings(rings: readonly (readonly V3[])[]): Convex {
  const points = distinct(rings.flat());
  const faces = rings.flatMap((ring) => {
    const vector = ringVector(ring);
    if (dot(vector, vector) < 1e-18) return [];
    const normal = unit(vector);
    return [{ normal, offset: Math.max(...points.map((p) => dot(p, normal))), ring }];
  });
  const edges = faces.flatMap(({ ring }) => pairs(ring).map(([a, b]) => minus(b, a)));
  return {
    points,
    faces,
    normals: directions(faces.map((face) => face.normal)),
    edges: directions(edges.filter((e) => dot(e, e) > 1e-12).map(unit)),
    ...boundsOf(points),
  };
}

/** The body after a rigid motion: what is alike in it stays alike. */
export function mapped(body: Convex, move: (p: V3) => V3): Convex {
  const origin = move(ZERO);
  const turn = (v: V3): V3 => minus(move(v), origin);
  const points = body.points.map(move);
  const faces = body.faces.map(({ normal, ring }) => {
    const outward = turn(normal);
    return { normal: outward, offset: Math.max(...points.map((p) => dot(p, outward))), ring: ring.map(move) };
  });
  return { points, faces, normals: body.normals.map(turn), edges: body.edges.map(turn), ...boundsOf(points) };
}

function boundsOf(points: readonly V3[]): Pick<Convex, "low" | "high"> {
  const bound = (of: (...values: number[]) => number): V3 => [
    of(...points.map((p) => p[0])),
    of(...points.map((p) => p[1])),
    of(...points.map((p) => p[2])),
  ];
  return { low: bound(Math.min), high: bound(Math.max) };
}

export const boxOf = (low: V3, high: V3): Convex => fromRings(boxRings(low, high));

export const volume = (body: Convex): number => {
  const inside = mean(body.points);
  return body.faces.reduce((so, { ring, normal, offset }) => {
    return so + ((offset - dot(inside, normal)) * dot(ringVector(ring), normal)) / 6;
  }, 0);
};

export const boxRings = (low: V3, high: V3): V3[][] => {
  const [a, b, c] = low;
  const [x, y, z] = high;
  return [
    [
      [a, b, c],
      [a, b, z],
      [a, y, z],
      [a, y, c],
    ],
    [
      [x, b, c],
      [x, y, c],
      [x, y, z],
      [x, b, z],
    ],
    [
      [a, b, c],
      [x, b, c],
      [x, b, z],
      [a, b, z],
    ],
    [
      [a, y, c],
      [a, y, z],
      [x, y, z],
      [x, y, c],
    ],
    [
      [a, b, c],
      [a, y, c],
      [x, y, c],
      [x, b, c],
    ],
    [
      [a, b, z],
      [x, b, z],
      [x, y, z],
      [a, y, z],
    ],
  ];
};

export function distinct(points: readonly V3[]): V3[] {
  const kept: V3[] = [];
  for (const p of points) if (!kept.some((q) => dot(minus(p, q), minus(p, q)) < 1e-16)) kept.push(p);
  return kept;
}

function directions(vectors: readonly V3[]): V3[] {
  const kept: V3[] = [];
  for (const v of vectors) if (!kept.some((w) => Math.abs(dot(v, w)) > 1 - 1e-13)) kept.push(v);
  return kept;
}
