/** Exact bounds. */
import { compare, type Rational, rational, ZERO } from "../units/rational.ts";
import type { Point, Solid, Vertex } from "./types.ts";

/** The exact corners of the box around a solid, square to the axes. Both are the origin when it is empty. */
export function exactBounds(solid: Solid): { readonly low: Point; readonly high: Point } {
  const vertices = solid.pieces.flatMap((piece) => piece.vertices);
  const corner = (sign: 1 | -1): Point => [
    extreme(
      vertices.map((v) => [v, v.x, v.X]),
      sign,
    ),
    extreme(
      vertices.map((v) => [v, v.y, v.Y]),
      sign,
    ),
    extreme(
      vertices.map((v) => [v, v.z, v.Z]),
      sign,
    ),
  ];
  return { low: corner(-1), high: corner(1) };
}

type Coordinate = readonly [Vertex, number, bigint];

function extreme(coordinates: readonly Coordinate[], sign: 1 | -1): Rational {
  const nearest = coordinates.reduce((so, [, at]) => Math.max(so, sign * at), -Infinity);
  // Doubles are right to far less than a unit: only the few within one unit need an exact comparison.
  return coordinates
    .filter(([, at]) => sign * at >= nearest - 1)
    .map(([vertex, , top]) => rational(top, vertex.W))
    .reduce((so, at, i) => (i === 0 || compare(at, so) === sign ? at : so), ZERO);
}
