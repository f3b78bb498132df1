import type { Packed, Piece, Problem } from "./search/problem.ts";

/** What makes a layout hard to carry out, the less the better: first cuts across, many settings of fence and stop; then small offcuts. */
export function trouble(bins: readonly Packed[], { bins: types }: Problem): number {
  const settings = new Set<number>();
  let [across, offcut] = [0, 0];
  const walk = (piece: Piece): void => {
    if (piece.part >= 0) return;
    const { rip, used } = piece;
    const [wide, long] = rip ? [piece.width - used, piece.length] : [piece.width, piece.length - used];
    offcut = Math.max(offcut, wide * long);
    for (const kid of piece.kids) {
      // Rips and crosscuts are told apart by their sign.
      settings.add(rip ? kid.width : -kid.length);
      walk(kid);
    }
  };
  for (const { root } of bins) {
    if (!root.rip && root.kids.length > 1) across += 1;
    walk(root);
  }
  const whole = Math.max(...types.map((type) => type.width * type.length));
  return settings.size + ACROSS * across - offcut / whole;
}

/** As bad as so many settings: a first cut over the whole width of a sheet. */
const ACROSS = 1;
