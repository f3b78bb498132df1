import type { Problem } from "../search/problem.ts";
import { rowOf } from "../search/rows.ts";
import type { Steps } from "../search/steps.ts";
import { type Kind, kindsOf } from "./kinds.ts";
import { GuillotineKnapsack, type Knapsack, type Pattern } from "./knapsack.ts";
import { roundedUp } from "./round.ts";
import { RowKnapsack } from "./row-knapsack.ts";
import { type Column, Simplex } from "./simplex.ts";

/** Prices are rounded down to this part of the dearest bin's cost; sums of them stay exact. */
const FINENESS = 2 ** 30;
const SMALL = 1e-7;
/** How much of the best prices so far is mixed into the prices by which patterns are sought: they swing less (P. Wentges, 1997). */
const PULL = 0.85;

export interface Relaxed {
  readonly bound: number;
  /** Patterns of the best mixture and how often, whole or not, each is cut. */
  readonly mixture: readonly { readonly pattern: Pattern; readonly times: number }[];
}

/**
 * A cost below which edge-to-edge cuts cannot come: patterns in whatever share are mixed at the least cost, and new patterns are sought by
 * what a part is worth in the mixture (P. C. Gilmore and R. E. Gomory, 1961). Every price list bounds the cost, once it is made small
 * enough for every bin (A. A. Farley, 1990). Ends when `wanted` is proven, when it cannot be more than `known`, or with the steps.
 * `first` are patterns to begin with.
 */
export function columnBound(
  problem: Problem,
  costs: readonly number[],
  limits: { readonly known: number; readonly wanted: number },
  first: readonly Pattern[],
  steps: Steps,
): Relaxed {
  const kinds = kindsOf(problem);
  const limited = problem.bins.flatMap((bin, type) => (Number.isFinite(bin.most) ? [type] : []));
  const right = [...kinds.map((kind) => kind.parts.length), ...limited.map((type) => problem.bins[type]?.most ?? 0)];
  const dearest = Math.max(1, ...costs);
  const patterns = new Map<Column, Pattern>();
  const column = (pattern: Pattern): Column => {
    const row = limited.indexOf(pattern.type);
    const made: Column = {
      cost: costs[pattern.type] ?? 0,
      rows: row < 0 ? [...pattern.counts] : [...pattern.counts, [kinds.length + row, 1]],
    };
    patterns.set(made, pattern);
    return made;
  };
  // To begin with every part has a bin dearer than any; nothing of it remains where the bins suffice.
  const lp = new Simplex(right, [
    ...kinds.map((_, i): Column => ({ cost: 2 * dearest, rows: [[i, 1]] })),
    ...limited.map((_, i): Column => ({ cost: 0, rows: [[kinds.length + i, 1]] })),
  ]);
  const worth = (prices: Float64Array, made: Column): number =>
    made.rows.reduce((sum, [row, amount]) => sum + (prices[row] as number) * amount, 0) - made.cost;
  const settle = (columns: readonly Column[]): void => {
    for (let turns = 0; turns < 50 * right.length; turns += 1) {
      const prices = lp.prices();
      steps.left -= right.length * right.length;
      const row = prices.findIndex((price, i) => (i < kinds.length ? price < -SMALL : price > SMALL));
      if (row >= 0) {
        if (!lp.enter({ cost: 0, rows: [[row, row < kinds.length ? -1 : 1]] })) return;
        continue;
      }
      const entering = columns.find((each) => worth(prices, each) > SMALL * dearest);
      if (entering === undefined || !lp.enter(entering)) return;
    }
  };
  const pool = first.map(column);
  settle(pool);
  const row = rowOf(problem);
  const knapsack: Knapsack =
    row === null
      ? new GuillotineKnapsack(
          problem,
          kinds.map(({ parts: [part = 0] }) => part),
        )
      : new RowKnapsack(row, kinds);
  const scale = FINENESS / dearest;
  let bound = limits.known;
  let [best, centre] = [-1, kinds.map(() => 0)];
  let pull = PULL;
  while (bound < limits.wanted && steps.left > 0) {
    if (roundedUp(lp.cost, costs) <= bound && bound > 0) break;
    const prices = lp.prices();
    const own = pull;
    const values = kinds.map((_, i) =>
      Math.floor(own * (centre[i] ?? 0) + (1 - own) * Math.max(0, (prices[i] as number) * scale)),
    );
    const most = knapsack.solve(values);
    steps.left -= knapsack.work;
    const proven = farley(problem, costs, kinds, values, most);
    if (proven.bound > best) [best, centre] = [proven.bound, values.map((value) => value * proven.factor * scale)];
    bound = Math.max(bound, roundedUp(proven.bound, costs));
    const better = most.flatMap((value, type): Column[] => {
      if (value === 0) return [];
      const made = column(knapsack.pattern(type));
      return worth(prices, made) > SMALL * dearest ? [made] : [];
    });
    if (better.length === 0 && own === 0) break;
    // Where the centre hides a pattern, the mixture's own prices are asked.
    pull = better.length === 0 ? 0 : PULL;
    pool.push(...better);
    settle(pool.slice(-12).toReversed());
  }
  const mixture = [...lp.solution()].flatMap(([made, times]) => {
    const pattern = patterns.get(made);
    return pattern === undefined || times <= SMALL ? [] : [{ pattern, times }];
  });
  return { bound, mixture };
}

/** The bound that prices prove, given the most that each bin is worth at them. Bins of which there are only some are worth no more than all of them. */
function farley(
  problem: Problem,
  costs: readonly number[],
  kinds: readonly Kind[],
  values: readonly number[],
  best: readonly number[],
): { readonly bound: number; readonly factor: number } {
  const total = kinds.reduce((sum, kind, i) => sum + kind.parts.length * (values[i] ?? 0), 0);
  let factor = Number.POSITIVE_INFINITY;
  for (const [type, bin] of problem.bins.entries())
    if (!Number.isFinite(bin.most) && (best[type] ?? 0) > 0)
      factor = Math.min(factor, (costs[type] ?? 0) / (best[type] ?? 1));
  if (!Number.isFinite(factor)) return { bound: 0, factor: 0 };
  let bound = factor * total;
  for (const [type, bin] of problem.bins.entries())
    if (Number.isFinite(bin.most)) bound -= bin.most * Math.max(0, factor * (best[type] ?? 0) - (costs[type] ?? 0));
  return { bound, factor };
}
