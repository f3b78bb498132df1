/** Where the record's origin lies: the front left bottom corner of the bounding box of the parts. */
import type { Solid, Vec, Vertex } from "../../../geometry/index.ts";
import type { Point } from "../../../solve/design.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { less, type Rational, rational, toNumber, ZERO } from "../../../units/rational.ts";
import type { Json } from "./json.ts";
import { millionthsOf } from "./number.ts";

export interface Frame {
  readonly low: Point;
  readonly high: Point;
  /** An exact point of the piece, in millimetres of the record. */
  readonly point: (point: Point) => Json;
  readonly vertex: (vertex: Vertex) => Json;
  /** The same for doubles, in units of 1/16 µm. */
  readonly vec: (at: Vec) => Json;
}

const COORDINATES = ["X", "Y", "Z"] as const;

export function frameOf(solids: readonly Solid[]): Frame {
  const vertices = solids.flatMap((solid) => solid.pieces.flatMap((piece) => piece.vertices));
  const bound = (beyond: (a: Rational, b: Rational) => boolean): Point => [
    outermost(vertices, "X", beyond),
    outermost(vertices, "Y", beyond),
    outermost(vertices, "Z", beyond),
  ];
  const [low, high] = [bound(less), bound((a, b) => less(b, a))];
  const fromOrigin = (n: bigint, d: bigint, origin: Rational) =>
    millionthsOf(n * origin.d - origin.n * d, d * origin.d);
  return {
    low,
    high,
    point: (point) => point.map((value, axis) => fromOrigin(value.n, value.d, low[axis as 0 | 1 | 2])),
    vertex: (v) => COORDINATES.map((name, axis) => fromOrigin(v[name], v.W, low[axis as 0 | 1 | 2])),
    vec: (at) => at.map((value, axis) => (value - toNumber(low[axis as 0 | 1 | 2])) / UNITS_PER_MM),
  };
}

/** The outermost coordinate, exact; zero where there are no vertices. */
function outermost(
  vertices: readonly Vertex[],
  name: "X" | "Y" | "Z",
  beyond: (a: Rational, b: Rational) => boolean,
): Rational {
  let found: Rational | undefined;
  for (const vertex of vertices) {
    const here = { n: vertex[name], d: vertex.W };
    if (found === undefined || beyond(here, found)) found = here;
  }
  return found === undefined ? ZERO : rational(found.n, found.d);
}
