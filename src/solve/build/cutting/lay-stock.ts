import type { Length } from "../../../units/length.ts";
import type { LayoutOptions, Supply } from "./ask.ts";
import { feasibleBound } from "./bounds/dual-feasible.ts";
import { trouble } from "./ease.ts";
import type { Item } from "./item.ts";
import { jointly, sumOf } from "./search/joint.ts";
import { type Packed, type Problem, partsIn } from "./search/problem.ts";
import { Ruin } from "./search/ruin.ts";
import { onesOf, type Solved, STEPS, solve } from "./search/solve.ts";
import type { Size } from "./sizes.ts";
import { smallSearch } from "./small/small-search.ts";
import { stagesOf } from "./small/to-piece.ts";
import { wholeProblem } from "./whole.ts";

/** More changes of direction than any layout needs. */
const ANY = 20;

export interface Found extends Solved {
  readonly problem: Problem;
}

/**
 * Boards or sheets of one stock for its blanks: in rips, crosscuts and rips again where that is as cheap as can be, else in whatever cuts
 * are cheapest. Blanks to be alike stay together where they can. Null where what lies there is not enough and nothing is sold.
 */
export function layStock(
  items: readonly Item[],
  sizes: readonly Size[],
  kerf: Length,
  { stages = 3, effort = "quick", carry }: Pick<LayoutOptions, "stages" | "effort"> & Pick<Supply, "carry">,
): Found | null {
  const most = stages === "any" ? ANY : stages;
  const asked = { stages: most, ...(carry && { carry }) };
  const together = wholeProblem(items, sizes, kerf, { ...asked, alike: true });
  const apart = wholeProblem(items, sizes, kerf, { ...asked, alike: false });
  const plain = effort === "plain";
  const small = smallStart(together, items, sizes, kerf, plain);
  const may = small?.packed.every(({ root }) => stagesOf(root) <= most) && isTogether(small.packed, together);
  const start = may ? small : undefined;
  if (start && (start.cost <= start.costBound || plain)) return { ...start, problem: together };
  if (plain) return found(solve(together, "plain"), together) ?? found(solve(apart, "plain"), apart);
  const first = found(solve(together, effort, start?.packed), together) ?? found(solve(apart, effort), apart);
  if (first === null) return null;
  const freely = stages === 3 && first.cost > first.costBound;
  const other = freely ? solve({ ...first.problem, stages: ANY }, "quick", first.packed) : null;
  const best = other !== null && other.cost < first.cost ? { ...first, ...other } : first;
  const costBound = Math.max(best.costBound, first.costBound);
  const packed = eased(first.problem, best);
  // What is easier to saw may also be fewer.
  const costOf = ({ type }: Packed): number => first.problem.bins[type]?.cost ?? 0;
  const cost = packed.reduce((so, bin) => so + costOf(bin), 0);
  const count = packed.filter(({ type }) => first.problem.bins[type]?.onHand !== true).length;
  return { ...best, packed, cost, count, costBound };
}

const found = (solved: Solved | null, problem: Problem): Found | null => solved && { ...solved, problem };

/** Fewer settings and larger offcuts at the same cost. */
function eased(problem: Problem, { packed }: Solved): readonly Packed[] {
  const deepest = Math.max(problem.stages, ...packed.map(({ root }) => stagesOf(root)));
  const joint = { ...jointly(problem).problem, stages: deepest };
  const steps = { left: STEPS.ease };
  return new Ruin(joint, 1).ease(packed, sumOf(packed, joint), (bins) => trouble(bins, problem), steps);
}

/** The layout by the small search, if there is one. */
function smallStart(problem: Problem, items: readonly Item[], sizes: readonly Size[], kerf: Length, plain: boolean) {
  const costs = problem.bins.map((bin) => bin.cost);
  const bounds = { costBound: feasibleBound(problem, costs), countBound: feasibleBound(problem, onesOf(problem)) };
  const small = smallSearch(problem, items, sizes, kerf, { ...bounds, plain });
  if (small === undefined) return undefined;
  const { packed, exact } = small;
  const cost = sumOf(packed, problem);
  const costBound = exact ? cost : bounds.costBound;
  const countBound = exact && sizes.length === 1 ? packed.length : bounds.countBound;
  const by: Solved["by"] = exact ? "trying" : "area";
  return { packed, cost, costBound, count: packed.length, countBound, by };
}

/** Whether each group lies in one bin. */
function isTogether(packed: readonly Packed[], { parts }: Problem): boolean {
  const groups = packed.map(({ root }) => new Set(partsIn(root).flatMap((part) => parts[part]?.group ?? [])));
  return new Set(groups.flatMap((own) => [...own])).size === groups.reduce((sum, own) => sum + own.size, 0);
}
