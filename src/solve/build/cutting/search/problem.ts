/**
 * A cutting problem in whole numbers: sizes have a kerf added on both sides of the comparison, so that pieces simply add up.
 */
export interface Problem {
  readonly bins: readonly BinType[];
  readonly parts: readonly PartSizes[];
  /** How often the direction of cutting may change, the first direction included; trimming is not counted. */
  readonly stages: number;
  /** What the first cuts make, or the whole bin, must fit this, turned either way; absent: no limit. */
  readonly carry?: { readonly shorter: number; readonly longer: number };
}

export interface BinType {
  readonly width: number;
  readonly length: number;
  /** Whole number. */
  readonly cost: number;
  /** How many there are; infinite for what can be bought without limit. */
  readonly most: number;
  /** It lies there, and is taken before anything is bought. */
  readonly onHand?: boolean;
}

export interface Way {
  readonly width: number;
  readonly length: number;
}

export interface PartSizes {
  /** The ways it may lie, at least one. */
  readonly ways: readonly Way[];
  /** Parts with one number come from one bin. */
  readonly group?: number;
}

/** A bin and how it is taken apart. */
export interface Packed {
  readonly type: number;
  readonly root: Piece;
}

/**
 * A piece of a bin. A part (`part` ≥ 0, lying the way `way`) may be smaller than its place: it is trimmed. A division (`part` −1) is cut
 * into `kids` one after another, by rips where `rip`, which take up `used` of it; the rest is free.
 */
export interface Piece {
  readonly part: number;
  readonly way: number;
  readonly rip: boolean;
  readonly width: number;
  readonly length: number;
  readonly used: number;
  readonly kids: readonly Piece[];
}

const NO_KIDS: readonly Piece[] = [];

export const leaf = (part: number, way: number, width: number, length: number): Piece => ({
  part,
  way,
  rip: false,
  width,
  length,
  used: 0,
  kids: NO_KIDS,
});

export const division = (rip: boolean, width: number, length: number, used: number, kids: readonly Piece[]): Piece => ({
  part: -1,
  way: 0,
  rip,
  width,
  length,
  used,
  kids,
});

/** Numbers of all parts in a piece, in their order. */
export function partsIn(piece: Piece, into: number[] = []): number[] {
  if (piece.part >= 0) into.push(piece.part);
  else for (const kid of piece.kids) partsIn(kid, into);
  return into;
}
