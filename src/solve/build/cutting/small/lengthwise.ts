import type { Bin, Item } from "../item.ts";
import type { Effort } from "./greedy.ts";
import { type Board, fill, type Place } from "./place.ts";

/** Ways of filling a board that are looked at, full or not, before the search gives up. */
const LIMIT = 500_000;

/** More than doubles lose in a sum of costs. */
const ROUNDING = 1e-12;

/** Blanks of one length, which may stand for each other. */
interface Kind {
  readonly length: number;
  readonly items: readonly Item[];
}
interface Plan {
  readonly cost: number;
  readonly count: number;
  readonly bin: Bin | null;
  /** How many of each kind the first board holds. */
  readonly taken: readonly number[];
  readonly rest: Plan | null;
}
const NOTHING: Plan = { cost: 0, count: 0, bin: null, taken: [], rest: null };

/** Whether no two blanks fit side by side, so that all cutting is across. */
export function isLengthwise(items: readonly Item[], bins: readonly Bin[]): boolean {
  const [least = 0, next = least] = items.map(({ shapes }) => shapes[0].width).toSorted((a, b) => a - b);
  const room = Math.max(...bins.map((bin) => bin.width));
  return items.every(({ shapes }) => shapes.length === 1) && (items.length < 2 || least + next > room);
}

/**
 * The cheapest boards, and among those the fewest, for blanks that lie one behind the other: every way of filling a board that
 * holds the longest blank left, over and over, remembering what is best for each rest. Undefined where that takes too long.
 */
export function cheapestLengths(items: readonly Item[], bins: readonly Bin[]): readonly Board[] | undefined {
  const kinds = kindsOf(items);
  const known = new Map<string, Plan>();
  const rate = Math.min(...bins.map((bin) => bin.cost / bin.length));
  const effort: Effort = { spent: 0 };

  /** No boards for these blanks cost less; with one kind of board, equal cost is ruled out too, since no fewer boards can do. */
  const least = (left: readonly number[]): number => {
    const sum = left.reduce((total, count, i) => total + count * (kinds[i]?.length ?? 0), 0);
    const [only] = bins;
    if (only === undefined || bins.length > 1) return sum * rate * (1 - ROUNDING);
    return Math.ceil(sum / only.length) * only.cost + only.cost * ROUNDING;
  };

  const solve = (left: readonly number[]): Plan | undefined => {
    const longest = left.findIndex((count) => count > 0);
    if (longest < 0) return NOTHING;
    const key = left.join(" ");
    const before = known.get(key);
    if (before !== undefined) return before;
    let best: Plan | undefined;
    for (const bin of bins) {
      for (const taken of fillings(kinds, left, longest, bin.length, effort)) {
        const others = left.map((count, i) => count - (taken[i] ?? 0));
        if (best !== undefined && bin.cost + least(others) > best.cost) continue;
        const rest = solve(others);
        if (rest === undefined || effort.spent > LIMIT) return undefined;
        const [cost, count] = [bin.cost + rest.cost, 1 + rest.count];
        if (best === undefined || cost < best.cost || (cost === best.cost && count < best.count))
          best = { cost, count, bin, taken, rest };
      }
    }
    if (best === undefined || effort.spent > LIMIT) return undefined;
    known.set(key, best);
    return best;
  };

  const plan = solve(kinds.map((kind) => kind.items.length));
  return plan && boardsOf(plan, kinds);
}

/** Longest first. */
function kindsOf(items: readonly Item[]): readonly Kind[] {
  const byLength = new Map<number, Item[]>();
  for (const item of items) {
    const { length } = item.shapes[0];
    const same = byLength.get(length);
    if (same === undefined) byLength.set(length, [item]);
    else same.push(item);
  }
  return [...byLength].map(([length, same]) => ({ length, items: same })).toSorted((a, b) => b.length - a.length);
}

/** Every way of filling a board to which nothing can be added, with at least one of kind `first`, the fullest kinds first. */
function* fillings(
  kinds: readonly Kind[],
  left: readonly number[],
  first: number,
  room: number,
  effort: Effort,
): Generator<readonly number[]> {
  const taken = left.map(() => 0);
  const shortestLeft = (): number =>
    Math.min(...kinds.map((kind, i) => ((left[i] ?? 0) > (taken[i] ?? 0) ? kind.length : Number.POSITIVE_INFINITY)));
  function* from(kind: number, free: number): Generator<readonly number[]> {
    effort.spent += 1;
    if (effort.spent > LIMIT) return;
    const length = kinds[kind]?.length;
    if (length === undefined) {
      if (free < shortestLeft()) yield [...taken];
      return;
    }
    const most = Math.min(left[kind] ?? 0, Math.floor(free / length));
    for (let count = most; count >= (kind === first ? 1 : 0); count -= 1) {
      taken[kind] = count;
      yield* from(kind + 1, free - count * length);
    }
    taken[kind] = 0;
  }
  yield* from(first, room);
}

function boardsOf(plan: Plan, kinds: readonly Kind[]): readonly Board[] {
  const next = kinds.map((kind) => kind.items.values());
  const boards: Board[] = [];
  for (let now: Plan | null = plan; now !== null && now.bin !== null; now = now.rest) {
    const row = now.taken.flatMap((count, kind) => Array.from({ length: count }, () => next[kind]?.next().value));
    boards.push({
      bin: now.bin,
      whole: inRow(
        row.filter((item) => item !== undefined),
        now.bin,
      ),
    });
  }
  return boards;
}

/** Blanks one behind the other from the near end on. */
function inRow(items: readonly Item[], piece: { readonly width: number; readonly length: number }): Place {
  const [item, ...others] = items;
  if (item === undefined) return { width: piece.width, length: piece.length, filled: null };
  const filling = fill(piece, item, item.shapes[0], false);
  return { width: piece.width, length: piece.length, filled: { ...filling, along: inRow(others, filling.along) } };
}
