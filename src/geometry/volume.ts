/** Volumes: exact for the books, in doubles for centres of mass. */
import { type Rational, rational } from "../units/rational.ts";
import { gcd } from "./gcd.ts";
import type { Piece, Vec, Vertex } from "./types.ts";
import { cross, dot, minus, plus, times } from "./vec.ts";
import { position } from "./vertex.ts";

/** Six times the volume of a piece, exact, in cubic units. */
export function volume6(piece: Piece): Rational {
  // One common denominator makes every coordinate whole, so that one reduction at the end is enough.
  const common = piece.vertices.reduce((so, { W }) => (so % W === 0n ? so : (so / gcd(so, W)) * W), 1n);
  const whole = new Map<Vertex, readonly [bigint, bigint, bigint]>();
  for (const v of piece.vertices) {
    const k = common / v.W;
    whole.set(v, [v.X * k, v.Y * k, v.Z * k]);
  }
  let total = 0n;
  const [origin] = piece.vertices;
  eachTetrahedron(piece, (u, v, w) => {
    const [o, p, q, r] = [origin, u, v, w].map((vertex) => vertex && whole.get(vertex));
    if (!o || !p || !q || !r) return;
    const [a1, a2, a3] = [p[0] - o[0], p[1] - o[1], p[2] - o[2]];
    const [b1, b2, b3] = [q[0] - o[0], q[1] - o[1], q[2] - o[2]];
    const [c1, c2, c3] = [r[0] - o[0], r[1] - o[1], r[2] - o[2]];
    total += a1 * (b2 * c3 - b3 * c2) - a2 * (b1 * c3 - b3 * c1) + a3 * (b1 * c2 - b2 * c1);
  });
  return rational(total, common * common * common);
}

/** Volume and centre of mass of a piece, in doubles. */
export function massOf(piece: Piece): { volume: number; centre: Vec } {
  const [first] = piece.vertices;
  if (!first) return { volume: 0, centre: [0, 0, 0] };
  const origin = position(first);
  let total = 0;
  let moment: Vec = [0, 0, 0];
  eachTetrahedron(piece, (u, v, w) => {
    const [a, b, c] = [minus(position(u), origin), minus(position(v), origin), minus(position(w), origin)];
    const six = dot(a, cross(b, c));
    total += six;
    moment = plus(moment, times(plus(plus(a, b), c), six / 4));
  });
  return { volume: total / 6, centre: plus(origin, times(moment, 1 / total)) };
}

/** The tetrahedra from the first vertex over the faces that do not touch it; each is given by its other three corners. */
function eachTetrahedron(piece: Piece, visit: (u: Vertex, v: Vertex, w: Vertex) => void): void {
  const [origin] = piece.vertices;
  for (const { vertices } of piece.faces) {
    const [u] = vertices;
    if (!u || !origin || vertices.includes(origin)) continue;
    for (let i = 1; i + 1 < vertices.length; i++) {
      const [v, w] = [vertices[i], vertices[i + 1]];
      if (v && w) visit(u, v, w);
    }
  }
}
