import type { Chance } from "./chance.ts";
import { type Free, freesOf, put } from "./free.ts";
import type { Packed, Piece, Problem, Way } from "./problem.ts";
import { ripsFirst, splitOf } from "./split.ts";
import type { Steps } from "./steps.ts";

/** A bin and what is free in it. */
export interface Bin extends Packed {
  readonly frees: readonly Free[];
  /** Of all free pieces. */
  readonly widest: number;
  readonly longest: number;
}

/** How parts are put in during one turn: by one of three ways to choose a free piece, and one of four to cut it. */
export interface Manner {
  readonly fit: number;
  readonly split: number;
}

/** What looking for a place of one part counts, beside each free piece looked at. */
export const PER_PART = 40;
/** A place is passed over so often although it is the best. */
const BLINK = 0.004;

/** Less than a part measures, however it lies. */
interface Smallest {
  readonly narrow: number;
  readonly short: number;
}

/** Puts parts into free pieces of bins. */
export class Placing {
  private readonly problem: Problem;
  private readonly chance: Chance;
  private readonly smallest: readonly Smallest[];
  private readonly least: Way;

  constructor(problem: Problem, chance: Chance) {
    this.problem = problem;
    this.chance = chance;
    this.smallest = problem.parts.map(({ ways }) => ({
      narrow: Math.min(...ways.map((way) => way.width)),
      short: Math.min(...ways.map((way) => way.length)),
    }));
    this.least = {
      width: Math.min(...this.smallest.map((part) => part.narrow)),
      length: Math.min(...this.smallest.map((part) => part.short)),
    };
  }

  bin(type: number, root: Piece): Bin {
    const frees: Free[] = [];
    freesOf(root, this.least, frees);
    let [widest, longest] = [0, 0];
    for (const free of frees) {
      if (free.width > widest) widest = free.width;
      if (free.length > longest) longest = free.length;
    }
    return { type, root, frees, widest, longest };
  }

  manner(): Manner {
    return { fit: this.chance.below(3), split: this.chance.below(4) };
  }

  /** Whether a part is too large for all that is free in a bin. */
  tooLarge(part: number, { widest, longest }: Bin): boolean {
    const { narrow, short } = this.smallest[part] as Smallest;
    return narrow > widest || short > longest;
  }

  /** Puts a part into the free piece that suits it best, of the bins from `first` up to and without `end`; returns the bin's place, −1 for none. */
  place(bins: Bin[], part: number, { fit, split }: Manner, steps: Steps, first = 0, end = bins.length): number {
    const { chance, problem } = this;
    const { ways = [] } = problem.parts[part] ?? {};
    let least = Number.POSITIVE_INFINITY;
    let [foundBin, foundFree, foundWay] = [-1, -1, -1];
    steps.left -= PER_PART + bins.length;
    for (let b = first; b < end; b += 1) {
      const bin = bins[b] as Bin;
      if (this.tooLarge(part, bin)) continue;
      const { frees } = bin;
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
    if (foundBin < 0) return -1;
    const bin = bins[foundBin] as Bin;
    const free = bin.frees[foundFree] as Free;
    const way = ways[foundWay] as Way;
    const across = splitOf(free, way, problem, ripsFirst(free, way, split, chance));
    if (across === null) return -1;
    bins[foundBin] = this.bin(bin.type, put(free, part, foundWay, way, across, problem.stages));
    return foundBin;
  }
}
