import type { Bin, Item, Shape } from "../item.ts";

/**
 * A piece of a board, `width` × `length` in whole units with a kerf added. It is empty, or a blank lies in its near corner and two
 * pieces remain: one `beside` it over the width, one further `along` the length.
 */
export interface Place {
  readonly width: number;
  readonly length: number;
  readonly filled: Filling | null;
}

export interface Filling {
  readonly item: Item;
  readonly shape: Shape;
  /** A rip comes first and `beside` is as long as the whole piece; else a crosscut does and `along` is as wide as it. */
  readonly ripFirst: boolean;
  readonly beside: Place;
  readonly along: Place;
}

/** A board or sheet and how it is taken apart. */
export interface Board {
  readonly bin: Bin;
  readonly whole: Place;
}

/** What a blank in the near corner leaves of a piece. */
export function fill(
  piece: { readonly width: number; readonly length: number },
  item: Item,
  shape: Shape,
  ripFirst: boolean,
): Filling {
  const [width, length] = [piece.width - shape.width, piece.length - shape.length];
  return {
    item,
    shape,
    ripFirst,
    beside: { width, length: ripFirst ? piece.length : shape.length, filled: null },
    along: { width: ripFirst ? shape.width : piece.width, length, filled: null },
  };
}

/** The blanks on a board, from the near corner on. */
export const contents = (place: Place): readonly Filling[] =>
  place.filled === null ? [] : [place.filled, ...contents(place.filled.beside), ...contents(place.filled.along)];

/** How far the blanks reach along a piece, kerf included. */
export const reach = ({ filled }: Place): number =>
  filled === null ? 0 : Math.max(reach(filled.beside), filled.shape.length + reach(filled.along));

/** The same blanks on a piece whose far end is `by` nearer. */
export function shorten(place: Place, by: number): Place {
  const { filled } = place;
  const shorter = { ...place, length: place.length - by };
  if (filled === null) return shorter;
  const beside = filled.ripFirst ? shorten(filled.beside, by) : filled.beside;
  return { ...shorter, filled: { ...filled, beside, along: shorten(filled.along, by) } };
}
