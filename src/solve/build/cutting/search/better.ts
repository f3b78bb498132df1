import type { CuttingEffort } from "../ask.ts";
import type { Bin, Item } from "../item.ts";
import type { Tree } from "../saw-board.ts";
import { cheapestBins, costOf } from "./fewest.ts";
import type { Problem } from "./problem.ts";
import { fewestBins, stepsOf } from "./solve.ts";

export interface Better {
  /** Null where nothing cheaper was found. */
  readonly boards: readonly Tree[] | null;
  /** No fewer boards will do; 0 where nothing could be said. */
  readonly bound: number;
  readonly method: "area" | "patterns";
}

/** Units of area that costs without a price are counted in: a square millimetre. */
const SQUARE = 16_000 * 16_000;

/** Looks for boards that cost less than `cost`, and for a proof that there are none. */
export function cheaper(
  items: readonly Item[],
  bins: readonly Bin[],
  cost: number,
  least: number,
  effort: CuttingEffort,
): Better {
  const priced = bins.every(({ price }) => price !== null);
  const whole = (value: number): number => (priced ? value : Math.round(value / SQUARE));
  const problem: Problem = {
    bins: bins.map((bin) => ({ width: bin.width, length: bin.length, cost: whole(bin.cost), most: Infinity })),
    parts: items.map(({ shapes }) => ({ ways: shapes.map(({ width, length }) => ({ width, length })) })),
    stages: 3,
  };
  const single = bins.length === 1;
  const solved = single
    ? fewestBins(problem, effort)
    : { bins: cheapestBins(problem, whole(least), { left: stepsOf(effort) }), bound: 0, method: "area" as const };
  const found = solved.bins.map(({ type, root }): Tree => ({ bin: bins[type] as Bin, tree: root, items }));
  return {
    boards: costOf(problem, solved.bins) < whole(cost) ? found : null,
    bound: solved.bound,
    method: solved.method,
  };
}
