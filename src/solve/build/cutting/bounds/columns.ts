import type { Problem } from "../search/problem.ts";
import { rowOf } from "../search/rows.ts";
import type { Steps } from "../search/steps.ts";
import { type Kind, kindsOf } from "./kinds.ts";
import { GuillotineKnapsack, type Knapsack, type Pattern } from "./knapsack.ts";
import { Mixture } from "./mixture.ts";
import { roundedUp } from "./round.ts";
import { RowKnapsack } from "./row-knapsack.ts";

/** Prices are rounded down to this part of the dearest bin's cost; sums of them stay exact. */
const FINENESS = 2 ** 30;
/** Patterns found lately, which are tried in the mixture. */
const RECENT = 12;
/** How much of the best prices so far is mixed into the prices by which patterns are sought: they swing less (P. Wentges, 1997). */
const PULL = 0.85;

export interface Relaxed {
  readonly bound: number;
  /** What each kind of part costs at least where all are cut at the bound; all 0 where nothing was found. */
  readonly prices: readonly number[];
  /** What was mixed; more of a kind may be in one than there are parts, where they do not lie in rows. */
  readonly patterns: readonly Pattern[];
}

/**
 * A cost below which edge-to-edge cuts cannot come: patterns in whatever share are mixed at the least cost, and new patterns are sought by
 * what a part is worth in the mixture (P. C. Gilmore and R. E. Gomory, 1961). Every price list bounds the cost, once it is made small
 * enough for every bin (A. A. Farley, 1990). Ends when `wanted` is proven, when it cannot be more than `known`, or with the steps.
 */
export function columnBound(
  problem: Problem,
  costs: readonly number[],
  limits: { readonly known: number; readonly wanted: number },
  steps: Steps,
): Relaxed {
  const kinds = kindsOf(problem);
  const dearest = Math.max(1, ...costs);
  const mixture = new Mixture<Pattern>(
    problem.bins,
    costs,
    kinds.map(({ parts }) => parts.length),
  );
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
    if (roundedUp(mixture.cost, costs) <= bound && bound > 0) break;
    const prices = mixture.prices();
    const own = pull;
    const values = kinds.map((_, i) => Math.floor(own * (centre[i] ?? 0) + (1 - own) * (prices[i] ?? 0) * scale));
    const most = knapsack.solve(values);
    steps.left -= knapsack.work;
    const proven = farley(problem, costs, kinds, values, most);
    if (proven.bound > best) [best, centre] = [proven.bound, values.map((value) => value * proven.factor * scale)];
    bound = Math.max(bound, roundedUp(proven.bound, costs));
    for (const [type, value] of most.entries()) if (value > 0) mixture.offer(knapsack.pattern(type));
    const better = mixture.settle(steps, RECENT);
    if (!better && own === 0) break;
    // Where the centre hides a pattern, the mixture's own prices are asked.
    pull = better ? PULL : 0;
  }
  const patterns = mixture.shares().map(({ pattern }) => pattern);
  return { bound, prices: centre.map((value) => value / scale), patterns };
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
