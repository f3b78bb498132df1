import type { CuttingEffort } from "../ask.ts";
import { columnBound, type Relaxed } from "../bounds/columns.ts";
import { feasibleBound } from "../bounds/dual-feasible.ts";
import { type Kind, kindsOf } from "../bounds/kinds.ts";
import type { Pattern } from "../bounds/knapsack.ts";
import { roundedUp } from "../bounds/round.ts";
import { type Packed, type Piece, type Problem, partsIn } from "./problem.ts";
import { rowsOf } from "./rows.ts";
import { Ruin, type Steps } from "./ruin.ts";

/** Steps before the bound by columns is looked for, for that bound, and afterwards. */
export const STEPS = {
  quick: { before: 10e6, bound: 20e6, after: 10e6 },
  normal: { before: 20e6, bound: 400e6, after: 150e6 },
  thorough: { before: 20e6, bound: 1000e6, after: 800e6 },
  /** To make a layout easier to saw. */
  ease: 2e6,
} as const;

/** With more parts than this a search takes all its steps; it settles sooner with fewer. */
const MANY = 30;

function stepsFor(parts: number, effort: CuttingEffort): { before: number; bound: number; after: number } {
  const share = Math.min(1, (parts / MANY) * (parts / MANY));
  const { before, bound, after } = STEPS[effort];
  return { before: before * share, bound: bound * share, after: after * share };
}

export interface Solved {
  readonly packed: readonly Packed[];
  readonly cost: number;
  /** No packing costs less. */
  readonly costBound: number;
  /** What is not on hand. */
  readonly count: number;
  readonly countBound: number;
  /** The bound comes from patterns, and holds for cuts from edge to edge only. */
  readonly byColumns: boolean;
}

/**
 * Bins for all parts: at the least cost, then the fewest. Null where what lies there is not enough and nothing can be bought. Every part must
 * fit some bin.
 */
export function solve(problem: Problem, effort: CuttingEffort, start?: readonly Packed[]): Solved | null {
  const costs = problem.bins.map((bin) => bin.cost);
  const ones = problem.bins.map((bin) => (bin.onHand ? 0 : 1));
  const steps = stepsFor(problem.parts.length, effort);
  const hunt = new Hunt(problem);
  if (!hunt.begin(start)) return null;
  let costBound = feasibleBound(problem, costs);
  let countBound = feasibleBound(problem, ones);
  let byColumns = false;
  hunt.improve(costBound, countBound, { left: steps.before });
  if (hunt.cost > costBound) {
    const limits = { known: costBound, wanted: hunt.cost };
    const relaxed = columnBound(problem, costs, limits, hunt.patterns(), { left: steps.bound });
    byColumns = relaxed.bound > costBound;
    costBound = relaxed.bound;
    hunt.follow(relaxed, costBound, { left: steps.after / 4 });
    hunt.improve(costBound, countBound, { left: steps.after });
  }
  const [dear] = costs.filter((cost) => cost > 0);
  if (dear !== undefined && costs.every((cost, i) => cost === (ones[i] ?? 0) * dear))
    countBound = Math.max(countBound, costBound / dear);
  return { packed: hunt.packed, cost: hunt.cost, costBound, count: hunt.count, countBound, byColumns };
}

/** The best packing so far, and how it is bettered. */
class Hunt {
  packed: readonly Packed[] = [];
  private readonly problem: Problem;
  private readonly joint: Problem;
  private readonly most: number;
  private readonly kinds: readonly Kind[];
  private seed = 1;

  constructor(problem: Problem) {
    this.problem = problem;
    this.most = problem.parts.length + 1;
    // Cost first, count second, in one number.
    this.joint = { ...problem, bins: problem.bins.map((bin) => ({ ...bin, cost: bin.cost * this.most + 1 })) };
    this.kinds = kindsOf(problem);
  }

  get cost(): number {
    return this.packed.reduce((sum, { type }) => sum + (this.problem.bins[type]?.cost ?? 0), 0);
  }

  get count(): number {
    return this.packed.filter(({ type }) => this.problem.bins[type]?.onHand !== true).length;
  }

  begin(start?: readonly Packed[]): boolean {
    const found = start ?? new Ruin(this.joint, 1).reach(Number.POSITIVE_INFINITY, [], { left: 2e6 });
    if (found === null) return false;
    this.packed = found;
    return true;
  }

  improve(costBound: number, countBound: number, steps: Steps): void {
    const costs = this.problem.bins.map((bin) => bin.cost);
    while (steps.left > 0) {
      const { cost } = this;
      const less = cost - roundedUp(1e-6, costs);
      if (cost > costBound) {
        if (this.attempt(less * this.most + this.most - 1, steps)) continue;
        // What is left of the steps was for the cost.
        return;
      }
      if (this.count <= countBound || costs.every((each) => each === 0 || each === costs[0])) return;
      if (!this.attempt(cost * this.most + this.packed.length - 1, steps)) return;
    }
  }

  private attempt(goal: number, steps: Steps): boolean {
    this.seed += 1;
    const area = (piece: Piece): number =>
      piece.part >= 0 ? piece.width * piece.length : piece.kids.reduce((sum, kid) => sum + area(kid), 0);
    const left = this.packed
      .map((packed) => ({ packed, filled: area(packed.root) }))
      .toSorted((a, b) => b.filled - a.filled);
    const cost = (): number => left.reduce((sum, { packed }) => sum + (this.joint.bins[packed.type]?.cost ?? 0), 0);
    while (left.length > 0 && cost() > goal) left.pop();
    const found = new Ruin(this.joint, this.seed).reach(
      goal,
      left.map(({ packed }) => packed),
      steps,
    );
    if (found === null) return false;
    this.packed = found;
    return true;
  }

  /** Cuts the whole numbers of a mixture of patterns first, and looks for bins for the rest; only where parts lie in a row. */
  follow({ mixture }: Relaxed, costBound: number, steps: Steps): void {
    const rows = rowsOf(this.problem, this.kinds, mixture);
    if (rows === null) return;
    const { bins, rest } = rows;
    const spent = bins.reduce((sum, { type }) => sum + (this.joint.bins[type]?.cost ?? 0), 0);
    const types = this.joint.bins.map((bin, type) => ({
      ...bin,
      most: bin.most - bins.filter((each) => each.type === type).length,
    }));
    const problem: Problem = {
      ...this.joint,
      bins: types,
      parts: rest.map((part) => this.problem.parts[part] ?? { ways: [] }),
    };
    if (rest.length === 0) return;
    const hunt = new Hunt({ ...problem, bins: types.map((bin) => ({ ...bin, cost: (bin.cost - 1) / this.most })) });
    if (!hunt.begin()) return;
    hunt.improve(costBound - (spent - bins.length) / this.most, 0, steps);
    const cost = hunt.cost + (spent - bins.length) / this.most;
    if (cost >= this.cost) return;
    this.packed = [...bins, ...hunt.packed.map(({ type, root }) => ({ type, root: renamed(root, rest) }))];
  }

  /** The bins as patterns. */
  patterns(): readonly Pattern[] {
    const kindOf = new Map<number, number>();
    for (const [kind, { parts }] of this.kinds.entries()) for (const part of parts) kindOf.set(part, kind);
    return this.packed.map(({ type, root }) => {
      const counts = new Map<number, number>();
      for (const part of partsIn(root)) {
        const kind = kindOf.get(part) ?? 0;
        counts.set(kind, (counts.get(kind) ?? 0) + 1);
      }
      return { type, counts };
    });
  }
}

const renamed = (piece: Piece, names: readonly number[]): Piece =>
  piece.part >= 0
    ? { ...piece, part: names[piece.part] ?? 0 }
    : { ...piece, kids: piece.kids.map((kid) => renamed(kid, names)) };
