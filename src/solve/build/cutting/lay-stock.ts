import type { Length } from "../../../units/length.ts";
import type { LayoutOptions, Supply } from "./ask.ts";
import { feasibleBound } from "./bounds/dual-feasible.ts";
import { trouble } from "./ease.ts";
import type { Item } from "./item.ts";
import { jointly, sumOf } from "./search/joint.ts";
import { type Packed, type Problem, partsIn } from "./search/problem.ts";
import { Ruin } from "./search/ruin.ts";
import { type Solved, STEPS, solve } from "./search/solve.ts";
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
  const start = smallStart(together, items, sizes, kerf, most);
  if (start?.sure) return { ...start.solved, problem: together };
  const grouped = together.parts.some(({ group }) => group !== undefined);
  const first = solve(together, effort, start?.packed) ?? (grouped ? solve(apart, effort) : null);
  if (first === null) return null;
  let found = first;
  if (stages === 3 && found.cost > found.costBound) {
    const free = solve({ ...together, stages: ANY }, "quick", found.packed);
    if (free !== null && free.cost < found.cost)
      found = { ...free, costBound: Math.max(free.costBound, first.costBound) };
  }
  return { ...found, packed: eased(together, found), problem: together };
}

/** Fewer settings and larger offcuts at the same cost. */
function eased(problem: Problem, { packed }: Solved): readonly Packed[] {
  const deepest = Math.max(problem.stages, ...packed.map(({ root }) => stagesOf(root)));
  const joint = { ...jointly(problem).problem, stages: deepest };
  const steps = { left: STEPS.ease };
  return new Ruin(joint, 1).ease(packed, sumOf(packed, joint), (bins) => trouble(bins, problem), steps);
}

/** The layout by the small search, if there is one that may be cut so; whether it is as cheap as can be. */
function smallStart(together: Problem, items: readonly Item[], sizes: readonly Size[], kerf: Length, stages: number) {
  const costBound = feasibleBound(
    together,
    together.bins.map((bin) => bin.cost),
  );
  const countBound = feasibleBound(
    together,
    together.bins.map(() => 1),
  );
  const packed = smallSearch(together, items, sizes, kerf, { costBound, countBound });
  if (packed === undefined || packed.some(({ root }) => stagesOf(root) > stages)) return undefined;
  const cost = packed.reduce((sum, { type }) => sum + (together.bins[type]?.cost ?? 0), 0);
  const solved: Solved = { packed, cost, costBound, count: packed.length, countBound, byColumns: false };
  const whole = packed.every(({ root }) => groupsStay(root, packed, together));
  return { packed, solved, sure: cost <= costBound && whole };
}

/** Whether no group in this bin lies in another as well. */
function groupsStay(root: Packed["root"], packed: readonly Packed[], { parts }: Problem): boolean {
  const groups = new Set(partsIn(root).flatMap((part) => parts[part]?.group ?? []));
  return packed.every(
    (other) => other.root === root || partsIn(other.root).every((part) => !groups.has(parts[part]?.group ?? -1)),
  );
}
