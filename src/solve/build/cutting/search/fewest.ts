import { type Packed, type Problem, partsIn } from "./problem.ts";
import { Ruin, type Steps } from "./ruin.ts";

/** Shares of the steps for one attempt at a goal; after each the search begins anew with other luck. */
const ATTEMPT = 0.34;

/**
 * Bins that hold all parts, at the lowest cost that is found: begun with greedy fillings, then one step of cost less is tried for, until the
 * cost comes down to `bound` or the steps are spent. `start`: what was found before. Every part must fit some bin of which there are enough.
 */
export function cheapestBins(
  problem: Problem,
  bound: number,
  steps: Steps,
  start?: readonly Packed[],
): readonly Packed[] {
  const total = steps.left;
  const step = problem.bins.map(({ cost }) => cost).reduce(gcd, 0) || 1;
  let best = start ?? greedy(problem, steps);
  let seed = 1;
  while (costOf(problem, best) > bound && steps.left > 0) {
    const goal = costOf(problem, best) - step;
    const share: Steps = { left: Math.min(steps.left, Math.ceil(total * ATTEMPT)) };
    const given = share.left;
    const found = new Ruin(problem, seed).reach(goal, within(problem, best, goal), share);
    steps.left -= given - share.left;
    seed += 1;
    if (found) best = found;
  }
  return best;
}

export const costOf = ({ bins }: Problem, packed: readonly Packed[]): number =>
  packed.reduce((so, { type }) => so + (bins[type]?.cost ?? 0), 0);

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** The best of some fillings from nothing. */
function greedy(problem: Problem, steps: Steps): readonly Packed[] {
  let best: readonly Packed[] | null = null;
  for (let seed = 1; seed <= FILLINGS; seed += 1) {
    const found = new Ruin(problem, -seed).fill(steps);
    if (found && (best === null || costOf(problem, found) < costOf(problem, best))) best = found;
    if (best && steps.left <= 0) break;
  }
  if (best === null) throw new Error("the parts do not fit what there is");
  return best;
}
const FILLINGS = 24;

/** The fullest bins, as far as they cost no more than the goal. */
function within({ bins }: Problem, packed: readonly Packed[], goal: number): readonly Packed[] {
  const fullest = packed.toSorted((a, b) => partsIn(b.root).length - partsIn(a.root).length);
  let left = goal;
  return fullest.filter(({ type }) => {
    const cost = bins[type]?.cost ?? 0;
    if (cost > left) return false;
    left -= cost;
    return true;
  });
}
