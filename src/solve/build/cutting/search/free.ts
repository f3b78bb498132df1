import { division, leaf, type Piece, type Problem } from "./problem.ts";

/** The way from a division up to the whole bin. */
interface Above {
  readonly piece: Piece;
  readonly index: number;
  readonly above: Above | null;
}

/** Free space at the end of a division. */
export interface Free {
  readonly width: number;
  readonly length: number;
  readonly owner: Piece;
  readonly above: Above | null;
  /** Which change of direction the owner's cuts are, from 1. */
  readonly stage: number;
}

/** All free pieces of a bin that are at least so large. */
export function freesOf(
  piece: Piece,
  least: { readonly width: number; readonly length: number },
  into: Free[],
  stage = 1,
  above: Above | null = null,
): void {
  const { rip, used } = piece;
  const width = rip ? piece.width - used : piece.width;
  const length = rip ? piece.length : piece.length - used;
  if (width >= least.width && length >= least.length) into.push({ width, length, owner: piece, above, stage });
  const { kids } = piece;
  for (let index = 0; index < kids.length; index += 1) {
    const kid = kids[index] as Piece;
    if (kid.part < 0) freesOf(kid, least, into, stage + 1, { piece, index, above });
  }
}

/** A part in its place: trimmed where nothing else may be cut from what is beside it. */
function inPlace(part: Piece, rip: boolean, width: number, length: number, stage: number, stages: number): Piece {
  const exact = rip ? part.width === width : part.length === length;
  if (exact || stage > stages) return part;
  return division(rip, width, length, rip ? part.width : part.length, [part]);
}

/**
 * The bin with a part put into a free piece. With `across` the direction of cutting changes first, so that the part's strip takes
 * the whole length of the free piece the other way; this needs a further stage.
 */
export function put(
  free: Free,
  part: number,
  way: number,
  size: { readonly width: number; readonly length: number },
  across: boolean,
  stages: number,
): Piece {
  const { owner, stage } = free;
  const { rip } = owner;
  const piece = leaf(part, way, size.width, size.length);
  if (across) {
    const [width, length] = rip ? [free.width, size.length] : [size.width, free.length];
    const first = owner.kids.length === 0;
    const kid = inPlace(piece, rip, width, length, first ? stage + 1 : stage + 2, stages);
    const strip = division(!rip, free.width, free.length, rip ? length : width, [kid]);
    return first && free.above === null ? strip : grown(free, strip, rip ? free.width : free.length);
  }
  const [width, length] = rip ? [size.width, free.length] : [free.width, size.length];
  return grown(free, inPlace(piece, !rip, width, length, stage + 1, stages), rip ? width : length);
}

function grown({ owner, above }: Free, kid: Piece, by: number): Piece {
  let piece = division(owner.rip, owner.width, owner.length, owner.used + by, [...owner.kids, kid]);
  for (let up = above; up !== null; up = up.above) {
    const kids = [...up.piece.kids];
    kids[up.index] = piece;
    piece = division(up.piece.rip, up.piece.width, up.piece.length, up.piece.used, kids);
  }
  return piece;
}

/**
 * A piece without the parts that `keep` refuses, and as large as it is told. With `tight` its strips become as narrow as what is
 * left in them. Null when nothing is left.
 */
export function without(
  piece: Piece,
  keep: (part: number) => boolean,
  tight: boolean,
  width: number,
  length: number,
): Piece | null {
  if (piece.part >= 0) return keep(piece.part) ? piece : null;
  const { rip } = piece;
  const kids: Piece[] = [];
  let used = 0;
  for (const kid of piece.kids) {
    const room = rip ? kid.width : kid.length;
    let left = without(kid, keep, tight, rip ? room : width, rip ? length : room);
    if (left === null) continue;
    if (tight && left.part < 0) {
      const need = needed(left, rip);
      if (need < room) left = resized(left, rip ? need : width, rip ? length : need);
    }
    kids.push(left);
    used += rip ? left.width : left.length;
  }
  return kids.length === 0 ? null : division(rip, width, length, used, kids);
}

/** The piece with other parts of the same sizes in place of its own. */
export function renamed(piece: Piece, nameOf: (part: number) => number, problem: Pick<Problem, "parts">): Piece {
  const { part, width, length } = piece;
  if (part < 0) return { ...piece, kids: piece.kids.map((kid) => renamed(kid, nameOf, problem)) };
  const name = nameOf(part);
  const way = problem.parts[name]?.ways.findIndex((each) => each.width === width && each.length === length) ?? 0;
  return leaf(name, way, width, length);
}

/** How wide (or long) the contents of a piece are. */
function needed(piece: Piece, wide: boolean): number {
  if (piece.part >= 0) return wide ? piece.width : piece.length;
  if (piece.rip === wide) return piece.used;
  let most = 0;
  for (const kid of piece.kids) most = Math.max(most, needed(kid, wide));
  return most;
}

/** The same contents in a piece of another size across its strips. */
export function resized(piece: Piece, width: number, length: number): Piece {
  if (piece.part >= 0) return piece;
  const kids = piece.kids.map((kid) =>
    kid.part >= 0 ? kid : piece.rip ? resized(kid, kid.width, length) : resized(kid, width, kid.length),
  );
  return division(piece.rip, width, length, piece.used, kids);
}
