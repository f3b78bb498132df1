import { equal } from "../../../../units/index.ts";
import type { Length } from "../../../../units/length.ts";
import { type Item, makeBin } from "../item.ts";
import type { Packed, Problem } from "../search/problem.ts";
import type { Size } from "../sizes.ts";
import { findBoards } from "./find-boards.ts";
import { judge } from "./judge.ts";
import { leastCost } from "./least-cost.ts";
import { cheapestLengths, isLengthwise } from "./lengthwise.ts";
import type { Board } from "./place.ts";
import { toPiece } from "./to-piece.ts";

/** For more boards than this the search is too coarse. */
const MOST_BOARDS = 4;

/**
 * Layouts that are easy to saw, or the cheapest lengths, for a few boards of one width; undefined where this is not such a case. `bound`
 * and `countBound` are what nothing can come below. Lengths are exact: nothing is cheaper. With `plain` little effort is taken.
 */
export function smallSearch(
  problem: Problem,
  items: readonly Item[],
  sizes: readonly Size[],
  kerf: Length,
  {
    costBound,
    countBound,
    plain,
  }: { readonly costBound: number; readonly countBound: number; readonly plain: boolean },
): { readonly packed: readonly Packed[]; readonly exact: boolean } | undefined {
  const [first] = sizes;
  if (first === undefined || problem.carry !== undefined) return undefined;
  if (sizes.some(({ width, onHand }) => onHand !== undefined || !equal(width, first.width))) return undefined;
  const made = sizes.map((size, i) => makeBin(size.usable, kerf, size.length, problem.bins[i]?.cost ?? 0));
  const bins = made.toSorted((a, b) => a.cost - b.cost || a.length - b.length);
  const numbers = new Map(items.map((item, i) => [item, i]));
  const packed = (boards: readonly Board[]): readonly Packed[] =>
    boards.flatMap(({ bin, whole }) => {
      const root = toPiece(whole, numbers);
      return root === null ? [] : [{ type: made.indexOf(bin), root }];
    });
  const lengthwise = isLengthwise(items, bins) ? cheapestLengths(items, bins) : undefined;
  if (lengthwise && judge(lengthwise).apart === 0) return { packed: packed(lengthwise), exact: true };
  if (countBound > MOST_BOARDS && !plain) return undefined;
  const least = Math.max(costBound, leastCost(items, bins, countBound));
  return { packed: packed(findBoards(items, bins, least, plain)), exact: false };
}
