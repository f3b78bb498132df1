import type { LayoutEffort } from "../ask.ts";
import { columnBound } from "../bounds/columns.ts";
import { feasibleBound } from "../bounds/dual-feasible.ts";
import { Hunt } from "./hunt.ts";
import type { Packed, Problem } from "./problem.ts";

/** Steps before the bound by columns is looked for, for that bound, and afterwards. */
export const STEPS = {
  plain: { before: 0.3e6, bound: 0, after: 0 },
  quick: { before: 10e6, bound: 20e6, after: 10e6 },
  normal: { before: 20e6, bound: 400e6, after: 450e6 },
  thorough: { before: 20e6, bound: 1000e6, after: 4500e6 },
  /** To make a layout easier to saw. */
  ease: 2e6,
} as const;

/** With more parts than this a search takes all its steps; it settles sooner with fewer. */
const MANY = 30;
/** With more than this a step takes longer: fewer are taken, down to half. */
const VERY_MANY = 150;

function stepsFor(parts: number, effort: LayoutEffort): { before: number; bound: number; after: number } {
  const share = Math.min(1, (parts / MANY) * (parts / MANY));
  const { before, bound, after } = STEPS[effort];
  const slow = Math.max(0.5, Math.min(1, VERY_MANY / parts));
  return { before: before * share, bound: bound * slow, after: after * share * slow };
}

export interface Solved {
  readonly packed: readonly Packed[];
  readonly cost: number;
  /** No packing costs less. */
  readonly costBound: number;
  /** What is not on hand. */
  readonly count: number;
  readonly countBound: number;
  /** Where the bound comes from: area, patterns (for cuts from edge to edge only), or every way having been tried. */
  readonly by: "area" | "patterns" | "trying";
}

/**
 * Bins for all parts: at the least cost, then the fewest. Null where what lies there is not enough and nothing can be bought. Every part must
 * fit some bin.
 */
export function solve(problem: Problem, effort: LayoutEffort, start?: readonly Packed[]): Solved | null {
  const costs = problem.bins.map((bin) => bin.cost);
  const ones = onesOf(problem);
  const steps = stepsFor(problem.parts.length, effort);
  const hunt = new Hunt(problem);
  if (!hunt.begin(start)) return null;
  let costBound = feasibleBound(problem, costs);
  let countBound = feasibleBound(problem, ones);
  let by: Solved["by"] = "area";
  hunt.improve(costBound, countBound, { left: steps.before });
  if (hunt.cost > costBound && steps.bound > 0) {
    const limits = { known: costBound, wanted: hunt.cost };
    const relaxed = columnBound(problem, costs, limits, { left: steps.bound });
    if (relaxed.bound > costBound) by = "patterns";
    costBound = relaxed.bound;
    const left = { left: steps.after };
    hunt.follow(relaxed, costBound, left);
    hunt.improve(costBound, countBound, left);
  }
  const [dear] = costs.filter((cost) => cost > 0);
  if (dear !== undefined && costs.every((cost, i) => cost === (ones[i] ?? 0) * dear))
    countBound = Math.max(countBound, costBound / dear);
  return { packed: hunt.packed, cost: hunt.cost, costBound, count: hunt.count, countBound, by };
}

/** Counts what is bought. */
export const onesOf = ({ bins }: Problem): readonly number[] => bins.map((bin) => (bin.onHand ? 0 : 1));
