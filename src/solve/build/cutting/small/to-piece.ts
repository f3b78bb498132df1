import type { Item } from "../item.ts";
import { division, leaf, type Piece } from "../search/problem.ts";
import type { Place } from "./place.ts";

/** A piece with a blank in its near corner as a division whose cuts follow one another; null when it is empty. */
export function toPiece(place: Place, numbers: ReadonlyMap<Item, number>): Piece | null {
  const { filled, width, length } = place;
  if (filled === null) return null;
  const { item, shape, ripFirst } = filled;
  const part = leaf(numbers.get(item) ?? 0, item.shapes.indexOf(shape), shape.width, shape.length);
  const [inside, rest] = ripFirst ? [filled.along, filled.beside] : [filled.beside, filled.along];
  const others = rowOf(inside, !ripFirst, numbers);
  const strip =
    others.length === 0
      ? part
      : rowed(!ripFirst, [part, ...others], ripFirst ? shape.width : width, ripFirst ? length : shape.length);
  return rowed(ripFirst, [strip, ...rowOf(rest, ripFirst, numbers)], width, length);
}

/** What lies in a piece, as neighbours of what is cut from the same strip. */
function rowOf(place: Place, rip: boolean, numbers: ReadonlyMap<Item, number>): readonly Piece[] {
  const piece = toPiece(place, numbers);
  return piece === null ? [] : piece.rip === rip ? piece.kids : [piece];
}

const rowed = (rip: boolean, kids: readonly Piece[], width: number, length: number): Piece =>
  division(
    rip,
    width,
    length,
    kids.reduce((sum, kid) => sum + (rip ? kid.width : kid.length), 0),
    kids,
  );

/** How often the direction of cutting changes in a piece, trimming not counted. */
export function stagesOf(piece: Piece): number {
  if (piece.part >= 0) return 0;
  const inner = Math.max(...piece.kids.map(stagesOf));
  const [only] = piece.kids;
  // A part alone in its strip is trimmed out of it.
  return piece.kids.length === 1 && only !== undefined && only.part >= 0 ? 0 : 1 + inner;
}
