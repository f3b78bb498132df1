import { Chance } from "./chance.ts";
import { gauged } from "./order.ts";
import { type Bin, type Manner, PER_PART, Placing } from "./placing.ts";
import { division, type Packed, type Problem, partsIn } from "./problem.ts";
import type { Steps } from "./steps.ts";
import { takenOut } from "./take-out.ts";

/** How many turns back a state may be as bad as. */
const HISTORY = 60;
/** What a part weighs more after each turn that it stays out, so that it goes in instead of others in the end. */
const GROWTH = 1.0005;
/** What free space in one piece is worth, for each bin all of which is free. */
const ROOMY = 0.02;

/**
 * Ruin and recreate (T. Gardeyn and T. Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem with
 * guillotine constraints", 2022): a cost is set as the goal, parts that find no place stay out, and some parts are taken out
 * and put in again until none is out.
 */
export class Ruin {
  private readonly problem: Problem;
  private readonly chance: Chance;
  private readonly weights: number[];
  private readonly placing: Placing;
  private readonly cheapest: number;
  private readonly keys: Float64Array;
  private readonly whole: number;
  /** Where a group of parts lies, while parts are put in. */
  private readonly homes = new Map<number, number>();
  private readonly grouped: boolean;

  constructor(problem: Problem, seed: number) {
    this.problem = problem;
    this.chance = new Chance(seed);
    const whole = Math.max(...problem.bins.map((bin) => bin.width * bin.length));
    this.whole = whole;
    this.weights = problem.parts.map(({ ways: [way] }) => ((way?.width ?? 0) * (way?.length ?? 0)) / whole);
    this.placing = new Placing(problem, this.chance);
    this.cheapest = Math.min(...problem.bins.map((bin) => bin.cost));
    this.keys = new Float64Array(problem.parts.length);
    this.grouped = problem.parts.some((part) => part.group !== undefined);
  }

  /** Bins with all parts, at most `goal` in cost, or null when the steps are spent. `start` is where to begin, with parts left out or not. */
  reach(goal: number, start: readonly Packed[], steps: Steps): readonly Packed[] | null {
    let bins: Bin[] = start.map((packed) => this.placing.bin(packed.type, packed.root));
    const there = new Set(bins.flatMap((bin) => partsIn(bin.root)));
    const missing = this.problem.parts.map((_, i) => i).filter((i) => !there.has(i));
    let out = this.recreate(bins, missing, goal, steps);
    let cost = this.cost(bins, out);
    const memory = new Float64Array(HISTORY).fill(cost);
    for (let turn = 0; out.length > 0 && steps.left > 0; turn += 1) {
      const [tried, { left }] = [bins.slice(), steps];
      const gone = this.ruin(tried);
      const rest = this.recreate(tried, [...out, ...gone], goal, steps);
      const found = this.cost(tried, rest);
      const before = memory[turn % HISTORY] as number;
      if (found <= cost || found <= before) {
        bins = tried;
        out = rest;
        cost = found;
      }
      if (cost < before) memory[turn % HISTORY] = cost;
      for (const part of out) this.weights[part] = (this.weights[part] as number) * GROWTH;
      cost = this.cost(bins, out);
      if (steps.left === left) steps.left -= 10_000;
    }
    return out.length === 0 ? bins : null;
  }

  /** The same parts in bins that cost no more, less of what `trouble` counts. */
  ease(
    start: readonly Packed[],
    goal: number,
    trouble: (bins: readonly Packed[]) => number,
    steps: Steps,
  ): readonly Packed[] {
    let bins: Bin[] = start.map((packed) => this.placing.bin(packed.type, packed.root));
    let least = trouble(bins);
    while (steps.left > 0) {
      steps.left -= PER_PART * this.weights.length;
      const tried = bins.slice();
      const gone = this.ruin(tried);
      if (this.recreate(tried, gone, goal, steps).length > 0) continue;
      const found = trouble(tried);
      if (found > least) continue;
      [bins, least] = [tried, found];
    }
    return bins;
  }

  private cost(bins: readonly Bin[], out: readonly number[]): number {
    let cost = 0;
    for (const part of out) cost += this.weights[part] as number;
    for (const { frees } of bins)
      for (const free of frees) {
        const share = (free.width * free.length) / this.whole;
        cost -= ROOMY * share * share;
      }
    return cost;
  }

  /** Takes parts out of a few bins; returns them. */
  private ruin(bins: Bin[]): number[] {
    const { chance } = this;
    const gone: number[] = [];
    for (let rounds = 1 + chance.below(3); rounds > 0 && bins.length > 0; rounds -= 1) {
      const at = chance.below(bins.length);
      const bin = bins[at] as Bin;
      const { left, out } = takenOut(bin.root, chance);
      gone.push(...out);
      if (left === null) bins.splice(at, 1);
      else bins[at] = this.placing.bin(bin.type, left);
    }
    return gone;
  }

  /** Puts parts in where they go, big ones first more or less; returns those that found no place. */
  private recreate(bins: Bin[], parts: number[], goal: number, steps: Steps): number[] {
    const { chance, problem, keys } = this;
    gauged(parts, problem, chance, keys, this.weights);
    const manner = this.placing.manner();
    this.homes.clear();
    if (this.grouped)
      for (const [at, bin] of bins.entries()) for (const part of partsIn(bin.root)) this.settle(part, at);
    let spent = 0;
    for (const bin of bins) spent += problem.bins[bin.type]?.cost ?? 0;
    return parts.filter((part) => {
      if (this.place(bins, part, manner, steps)) return false;
      const opened = this.open(bins, part, goal - spent);
      if (opened === null) return true;
      bins.push(opened);
      if (this.place(bins, part, manner, steps, bins.length - 1)) {
        spent += problem.bins[opened.type]?.cost ?? 0;
        return false;
      }
      bins.pop();
      return true;
    });
  }

  private settle(part: number, at: number): void {
    const group = this.problem.parts[part]?.group;
    if (group !== undefined) this.homes.set(group, at);
  }

  /** A new bin for a part, if there is one within the cost: any that lies there, else any that can be bought. */
  private open(bins: readonly Bin[], part: number, within: number): Bin | null {
    const { problem, chance } = this;
    const { ways = [], group } = problem.parts[part] ?? {};
    if (within < this.cheapest || (group !== undefined && this.homes.has(group))) return null;
    const types = problem.bins.flatMap((bin, type) => {
      if (bin.cost > within || !ways.some((way) => way.width <= bin.width && way.length <= bin.length)) return [];
      const there = bins.reduce((n, other) => n + (other.type === type ? 1 : 0), 0);
      return there < bin.most ? [type] : [];
    });
    if (types.length === 0) return null;
    const there = types.filter((type) => problem.bins[type]?.onHand);
    const among = there.length > 0 ? there : types;
    const type = among[chance.below(among.length)] as number;
    const { width = 0, length = 0 } = problem.bins[type] ?? {};
    return this.placing.bin(type, division(false, width, length, 0, []));
  }

  /** Puts a part into one of the bins from `first` on, or where its group lies. */
  private place(bins: Bin[], part: number, manner: Manner, steps: Steps, first = 0): boolean {
    const { group } = this.problem.parts[part] ?? {};
    const home = group === undefined ? undefined : this.homes.get(group);
    const at =
      home === undefined
        ? this.placing.place(bins, part, manner, steps, first)
        : this.placing.place(bins, part, manner, steps, home, home + 1);
    if (at >= 0) this.settle(part, at);
    return at >= 0;
  }
}
