import type { BinType, Packed, Problem } from "./problem.ts";

/** What a bin counts beside its cost. */
const ONE = 1000;

/** A problem in which one number stands for the cost first and, among equal costs, for what is used up: bins that are bought, area on hand. */
export interface Joint {
  readonly problem: Problem;
  /** The number from which on a cost is meant; what is below is use. */
  readonly unit: number;
}

export function jointly(problem: Problem): Joint {
  const unit = ONE * (problem.parts.length + 1);
  const whole = Math.max(...problem.bins.map((bin) => bin.width * bin.length));
  const use = (bin: BinType): number =>
    bin.onHand ? Math.max(1, Math.round((ONE * bin.width * bin.length) / whole)) : ONE;
  return {
    problem: { ...problem, bins: problem.bins.map((bin) => ({ ...bin, cost: bin.cost * unit + use(bin) })) },
    unit,
  };
}

export const sumOf = (packed: readonly Packed[], { bins }: Problem): number =>
  packed.reduce((sum, { type }) => sum + (bins[type]?.cost ?? 0), 0);
