/** Solids: partitions into convex pieces, made by cutting. */
import { add, less, multiply, type Rational, rational, ZERO } from "../units/rational.ts";
import { once } from "./once.ts";
import { boxPiece, clip, intersect as intersectPiece, split } from "./piece.ts";
import { boxPlanes } from "./plane.ts";
import type { Piece, Plane, Point, Solid, Vec } from "./types.ts";
import { plus, times } from "./vec.ts";
import { side } from "./vertex.ts";
import { massOf, volume6 } from "./volume.ts";

/** No wood at all. Its bounds contain nothing. */
export const EMPTY: Solid = {
  pieces: [],
  low: [Infinity, Infinity, Infinity],
  high: [-Infinity, -Infinity, -Infinity],
};

export const isEmpty = (solid: Solid): boolean => solid.pieces.length === 0;

/** A solid of pieces that do not overlap. */
export function solidOf(pieces: readonly Piece[]): Solid {
  if (pieces.length === 0) return EMPTY;
  const bound = (of: (...values: number[]) => number, corner: "low" | "high"): Vec => [
    pieces.reduce((so, piece) => of(so, piece[corner][0]), EMPTY[corner][0]),
    pieces.reduce((so, piece) => of(so, piece[corner][1]), EMPTY[corner][1]),
    pieces.reduce((so, piece) => of(so, piece[corner][2]), EMPTY[corner][2]),
  ];
  return { pieces, low: bound(Math.min, "low"), high: bound(Math.max, "high") };
}

/** The box from low to high; empty unless it has all three extents. */
export function solidBox(low: Point, high: Point): Solid {
  const sound = less(low[0], high[0]) && less(low[1], high[1]) && less(low[2], high[2]);
  return sound ? solidOf([boxPiece(low, high)]) : EMPTY;
}

/** What is left inside a plane. */
export const cut = (solid: Solid, plane: Plane): Solid => eachPiece(solid, (piece) => keep(clip(piece, plane)));

/** What is left inside all the planes. */
export const intersect = (solid: Solid, planes: readonly Plane[]): Solid =>
  eachPiece(solid, (piece) => keep(intersectPiece(piece, planes)));

/** What is left outside a convex region. Pieces that the region does not meet stay whole. */
export const subtract = (solid: Solid, planes: readonly Plane[]): Solid =>
  eachPiece(solid, (piece) => piecesOutside(piece, planes));

export function subtractBox(solid: Solid, low: Point, high: Point): Solid {
  const sound = less(low[0], high[0]) && less(low[1], high[1]) && less(low[2], high[2]);
  return sound ? subtract(solid, boxPlanes(low, high)) : solid;
}

/** All the pieces together; the solids must not overlap. */
export const unite = (solids: readonly Solid[]): Solid => solidOf(solids.flatMap((solid) => solid.pieces));

/** Exact, in cubic units. */
export const volume = once(
  (solid: Solid): Rational =>
    multiply(
      solid.pieces.reduce((so, piece) => add(so, volume6(piece)), ZERO),
      rational(1, 6),
    ),
);

/** The centre of mass; the origin for an empty solid. */
export const centroid = once((solid: Solid): Vec => {
  let total = 0;
  let moment: Vec = [0, 0, 0];
  for (const piece of solid.pieces) {
    const mass = massOf(piece);
    total += mass.volume;
    moment = plus(moment, times(mass.centre, mass.volume));
  }
  return total > 0 ? times(moment, 1 / total) : [0, 0, 0];
});

function piecesOutside(piece: Piece, planes: readonly Plane[]): readonly Piece[] {
  // Most regions miss most pieces: one plane with the whole piece outside settles it without a cut.
  if (planes.some((plane) => piece.vertices.every((vertex) => side(vertex, plane) >= 0))) return [piece];
  const left: Piece[] = [];
  let rest: Piece | null = piece;
  for (const plane of planes) {
    const parts: ReturnType<typeof split> = split(rest, plane);
    if (parts.outside) left.push(parts.outside);
    rest = parts.inside;
    if (!rest) return [piece];
  }
  return left;
}

/** Replaces each piece; the solid itself is returned when nothing changed. */
function eachPiece(solid: Solid, replace: (piece: Piece) => readonly Piece[]): Solid {
  const pieces = solid.pieces.flatMap(replace);
  const same = pieces.length === solid.pieces.length && pieces.every((piece, i) => piece === solid.pieces[i]);
  return same ? solid : solidOf(pieces);
}

const keep = (piece: Piece | null): readonly Piece[] => (piece ? [piece] : []);
