import type { Bin, Item, Shape } from "../item.ts";
import { type Board, type Filling, fill, reach, shorten } from "./place.ts";
import type { Rule } from "./rules.ts";

/** Effort is counted, not timed, so that every machine stops at the same plan. */
export interface Effort {
  spent: number;
}

/** What placing a blank takes besides looking at free pieces, counted in such looks. */
const PER_BLANK = 30;

/** A piece while the boards are being filled. */
interface Free {
  readonly width: number;
  readonly length: number;
  filled: Filling | null;
}

/**
 * Places blanks one after another, each in the free piece that the rule likes best; where none is large enough a new board of the
 * kind `open` is begun, or the cheapest that holds the blank. Afterwards each board is exchanged for the cheapest that still
 * holds its blanks. Every blank must fit some kind of board.
 */
export function pack(items: readonly Item[], bins: readonly Bin[], open: Bin, rule: Rule, effort: Effort): Board[] {
  const [least, shortest] = [smallest(items, "width"), smallest(items, "length")];
  const wholes: { bin: Bin; whole: Free }[] = [];
  const frees: Free[] = [];
  for (const item of items) {
    let found = bestFree(item, frees, rule, effort);
    if (found === undefined) {
      const bin = [open, ...bins].find((b) => item.shapes.some((shape) => fits(shape, b)));
      if (bin === undefined) throw new Error(`blank ${item.blank.id} fits no board`);
      const whole: Free = { width: bin.width, length: bin.length, filled: null };
      wholes.push({ bin, whole });
      frees.push(whole);
      found = bestFree(item, [whole], rule, effort);
    }
    if (found === undefined) throw new Error(`blank ${item.blank.id} fits no free piece`);
    const { free, shape } = found;
    const [over, beyond] = [free.width - shape.width, free.length - shape.length];
    const filling = fill(free, item, shape, rule.split(over, beyond, shape.width, shape.length));
    free.filled = filling;
    const left = [filling.beside, filling.along].filter((piece) => piece.width >= least && piece.length >= shortest);
    frees.splice(frees.indexOf(free), 1, ...left);
  }
  return wholes.map(({ bin, whole }) => exchange({ bin, whole }, bins));
}

const fits = (shape: Shape, piece: { readonly width: number; readonly length: number }): boolean =>
  shape.width <= piece.width && shape.length <= piece.length;

function smallest(items: readonly Item[], side: "width" | "length"): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { shapes } of items) for (const shape of shapes) least = Math.min(least, shape[side]);
  return least;
}

function bestFree(
  item: Item,
  frees: readonly Free[],
  rule: Rule,
  effort: Effort,
): { free: Free; shape: Shape } | undefined {
  let best: { free: Free; shape: Shape } | undefined;
  let least = Number.POSITIVE_INFINITY;
  effort.spent += PER_BLANK + frees.length * item.shapes.length;
  for (const free of frees)
    for (const shape of item.shapes) {
      if (!fits(shape, free)) continue;
      const score = rule.fit(free.width - shape.width, free.length - shape.length, shape.width, shape.length);
      if (score < least) [best, least] = [{ free, shape }, score];
    }
  return best;
}

/** The same blanks on the cheapest board that holds them. Boards of one stock differ in length only. */
function exchange(board: Board, bins: readonly Bin[]): Board {
  const needed = reach(board.whole);
  const bin = bins.find((candidate) => candidate.length >= needed && candidate.cost < board.bin.cost);
  return bin === undefined ? board : { bin, whole: shorten(board.whole, board.bin.length - bin.length) };
}
