/** Whether two solids fill the same space. */
import { TOLERANCE } from "../units/length.ts";
import { plane } from "./plane.ts";
import { boundsDepth } from "./separation.ts";
import { isEmpty, solidOf, subtract } from "./solid.ts";
import type { Piece, Plane, Solid } from "./types.ts";

/** True when no point of either is farther than the tolerance outside the other, however they are divided into pieces. */
export const matches = (a: Solid, b: Solid): boolean => sameDivision(a, b) || (covers(a, b) && covers(b, a));

/** The same pieces in any order: nothing more to look at. */
function sameDivision(a: Solid, b: Solid): boolean {
  if (a.pieces.length !== b.pieces.length) return false;
  return a.pieces.every((p) => {
    const vertices = new Set(p.vertices);
    return b.pieces.some((q) => q.vertices.length === vertices.size && q.vertices.every((v) => vertices.has(v)));
  });
}

/** Whether b, grown by the tolerance, contains all of a. */
function covers(b: Solid, a: Solid): boolean {
  return a.pieces.every((piece) => {
    let rest: Solid = solidOf([piece]);
    for (const q of b.pieces) {
      if (boundsDepth(q, rest) > -TOLERANCE) rest = subtract(rest, grown(q));
      if (isEmpty(rest)) return true;
    }
    return false;
  });
}

const grown = (piece: Piece): readonly Plane[] =>
  piece.faces.map(({ plane: { A, B, C, D, norm } }) => plane(A, B, C, D + BigInt(Math.ceil(TOLERANCE * norm))));
