import { Chance } from "./chance.ts";
import { type Free, freesOf, put } from "./free.ts";
import { gauged } from "./order.ts";
import { division, type Packed, type Piece, type Problem, partsIn, type Way } from "./problem.ts";
import { ripsFirst, splitOf } from "./split.ts";
import type { Steps } from "./steps.ts";
import { takenOut } from "./take-out.ts";

export interface Bin extends Packed {
  readonly frees: readonly Free[];
  /** Of all free pieces. */
  readonly widest: number;
  readonly longest: number;
}

/** What looking for a place of one part counts, beside each free piece looked at. */
const PER_PART = 40;
/** How many turns back a state may be as bad as. */
const HISTORY = 60;
/** What a part weighs more after each turn that it stays out, so that it goes in instead of others in the end. */
const GROWTH = 1.0005;
/** What free space in one piece is worth, for each bin all of which is free. */
const ROOMY = 0.02;
/** A place is passed over so often although it is the best. */
const BLINK = 0.004;

/** Less than a part measures, however it lies. */
interface Smallest {
  readonly narrow: number;
  readonly short: number;
}

/** How parts are put in during one turn. */
interface Manner {
  readonly fit: number;
  readonly split: number;
}

/**
 * Ruin and recreate (T. Gardeyn and T. Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem with
 * guillotine constraints", 2022): a cost is set as the goal, parts that find no place stay out, and some parts are taken out
 * and put in again until none is out.
 */
export class Ruin {
  private readonly problem: Problem;
  private readonly chance: Chance;
  private readonly weights: number[];
  private readonly least: Way;
  private readonly smallest: readonly Smallest[];
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
    this.smallest = problem.parts.map(({ ways }) => ({
      narrow: Math.min(...ways.map((way) => way.width)),
      short: Math.min(...ways.map((way) => way.length)),
    }));
    this.least = {
      width: Math.min(...this.smallest.map((part) => part.narrow)),
      length: Math.min(...this.smallest.map((part) => part.short)),
    };
    this.cheapest = Math.min(...problem.bins.map((bin) => bin.cost));
    this.keys = new Float64Array(problem.parts.length);
    this.grouped = problem.parts.some((part) => part.group !== undefined);
  }

  /** Bins with all parts, at most `goal` in cost, or null when the steps are spent. `start` is where to begin, with parts left out or not. */
  reach(goal: number, start: readonly Packed[], steps: Steps): readonly Packed[] | null {
    let bins: Bin[] = start.map((packed) => this.bin(packed.type, packed.root));
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
    let bins: Bin[] = start.map((packed) => this.bin(packed.type, packed.root));
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

  private bin(type: number, root: Piece): Bin {
    const frees: Free[] = [];
    freesOf(root, this.least, frees);
    let [widest, longest] = [0, 0];
    for (const free of frees) {
      if (free.width > widest) widest = free.width;
      if (free.length > longest) longest = free.length;
    }
    return { type, root, frees, widest, longest };
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
      else bins[at] = this.bin(bin.type, left);
    }
    return gone;
  }

  /** Puts parts in where they go, big ones first more or less; returns those that found no place. */
  private recreate(bins: Bin[], parts: number[], goal: number, steps: Steps): number[] {
    const { chance, problem, keys } = this;
    gauged(parts, problem, chance, keys, this.weights);
    const manner = { fit: chance.below(3), split: chance.below(4) };
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
    return this.bin(type, division(false, width, length, 0, []));
  }

  /** Puts a part into the free piece that suits it best, of the bins from `first` on. */
  private place(bins: Bin[], part: number, { fit, split }: Manner, steps: Steps, first = 0): boolean {
    const { chance, problem } = this;
    const { ways = [], group } = problem.parts[part] ?? {};
    const home = group === undefined ? undefined : this.homes.get(group);
    let least = Number.POSITIVE_INFINITY;
    let [foundBin, foundFree, foundWay] = [-1, -1, -1];
    const { narrow, short } = this.smallest[part] as Smallest;
    steps.left -= PER_PART + bins.length;
    for (let b = home ?? first; b < (home === undefined ? bins.length : home + 1); b += 1) {
      const { frees, widest, longest } = bins[b] as Bin;
      if (narrow > widest || short > longest) continue;
      steps.left -= frees.length;
      for (let f = 0; f < frees.length; f += 1) {
        const free = frees[f] as Free;
        for (let w = 0; w < ways.length; w += 1) {
          const way = ways[w] as Way;
          const over = free.width - way.width;
          const beyond = free.length - way.length;
          if (over < 0 || beyond < 0) continue;
          const score =
            fit === 0
              ? free.width * free.length + Math.min(over, beyond)
              : fit === 1
                ? Math.min(over, beyond)
                : Math.max(over, beyond);
          if (score >= least || chance.next() <= BLINK) continue;
          if (problem.carry !== undefined && splitOf(free, way, problem, true) === null) continue;
          [least, foundBin, foundFree, foundWay] = [score, b, f, w];
        }
      }
    }
    if (foundBin < 0) return false;
    const bin = bins[foundBin] as Bin;
    const free = bin.frees[foundFree] as Free;
    const way = ways[foundWay] as Way;
    const across = splitOf(free, way, problem, ripsFirst(free, way, split, chance));
    if (across === null) return false;
    bins[foundBin] = this.bin(bin.type, put(free, part, foundWay, way, across, problem.stages));
    this.settle(part, foundBin);
    return true;
  }
}
