import { Chance } from "./chance.ts";
import { type Free, freesOf, put, without } from "./free.ts";
import { division, type Packed, type Piece, type Problem, partsIn } from "./problem.ts";

/** Steps are counted, not timed, so that every machine stops at the same plan. */
export interface Steps {
  left: number;
}

interface Bin extends Packed {
  readonly frees: readonly Free[];
}

/** What looking for places of one part, and building one new bin, count beside each free piece looked at. */
const PER_PART = 8;

/** Looks for a way to put all parts into bins whose cost together is at most `goal`. */
export class Ruin {
  private readonly problem: Problem;
  private readonly chance: Chance;
  private readonly areas: readonly number[];
  private readonly least: { readonly width: number; readonly length: number };
  private readonly keys: Float64Array;
  private readonly limit: number;

  constructor(problem: Problem, seed: number) {
    this.problem = problem;
    this.chance = new Chance(seed);
    const whole = Math.max(...problem.bins.map((bin) => bin.width * bin.length));
    this.limit = whole;
    this.areas = problem.parts.map(({ ways: [way] }) => ((way?.width ?? 0) * (way?.length ?? 0)) / whole);
    const ways = problem.parts.flatMap((part) => part.ways);
    this.least = {
      width: Math.min(...ways.map((way) => way.width)),
      length: Math.min(...ways.map((way) => way.length)),
    };
    this.keys = new Float64Array(problem.parts.length);
  }

  /** Bins with all parts, at most `goal` in cost, or null when the steps are spent. `start` is where to begin, some parts left out or not. */
  reach(goal: number, start: readonly Packed[], steps: Steps): readonly Packed[] | null {
    let bins: Bin[] = start.map((packed) => this.bin(packed.type, packed.root));
    const there = new Set(bins.flatMap((bin) => partsIn(bin.root)));
    let out = this.problem.parts.map((_, i) => i).filter((i) => !there.has(i));
    out = this.recreate(bins, out, goal, steps);
    let cost = this.cost(bins, out);
    const total = steps.left;
    const memory = new Float64Array(HISTORY).fill(cost);
    let turn = 0;
    while (out.length > 0 && steps.left > 0) {
      const tried = bins.slice();
      const gone = this.ruin(tried);
      const rest = this.recreate(tried, [...out, ...gone], goal, steps);
      const found = this.cost(tried, rest);
      const slot = turn % HISTORY;
      if (found <= cost || found <= (memory[slot] as number)) {
        bins = tried;
        out = rest;
        cost = found;
      }
      if (cost < (memory[slot] as number)) memory[slot] = cost;
      turn += 1;
    }
    void total;
    return out.length === 0 ? bins : null;
  }

  private bin(type: number, root: Piece): Bin {
    const frees: Free[] = [];
    freesOf(root, this.least, frees);
    return { type, root, frees };
  }

  private empty(type: number): Bin {
    const { width = 0, length = 0 } = this.problem.bins[type] ?? {};
    return this.bin(type, division(false, width, length, 0, []));
  }

  private cost(bins: readonly Bin[], out: readonly number[]): number {
    let cost = 0;
    for (const part of out) cost += this.areas[part] as number;
    let roomy = 0;
    for (const { frees } of bins)
      for (const free of frees) {
        const share = (free.width * free.length) / this.limit;
        roomy += share * share;
      }
    return cost - ROOMY * roomy;
  }

  /** Takes parts out of a few bins; returns them. */
  private ruin(bins: Bin[]): number[] {
    const { chance } = this;
    const gone: number[] = [];
    const rounds = 1 + chance.below(3);
    for (let round = 0; round < rounds && bins.length > 0; round += 1) {
      const at = chance.below(bins.length);
      const bin = bins[at] as Bin;
      const inside = partsIn(bin.root);
      const most = Math.min(inside.length, 12);
      const share = chance.next();
      if (inside.length === 0 || (most === inside.length && share < 0.3)) {
        gone.push(...inside);
        bins.splice(at, 1);
        continue;
      }
      const count = 1 + chance.below(most);
      const from = chance.below(inside.length);
      const chosen = new Set<number>();
      for (let i = 0; i < count; i += 1)
        chosen.add(inside[share < 0.7 ? (from + i) % inside.length : chance.below(inside.length)] as number);
      const { width, length } = bin.root;
      const left = without(bin.root, (part) => !chosen.has(part), chance.next() < 0.5, width, length);
      gone.push(...chosen);
      if (left === null) bins.splice(at, 1);
      else bins[at] = this.bin(bin.type, left);
    }
    return gone;
  }

  /** Puts parts in where they go, biggest first more or less; returns those that found no place. */
  private recreate(bins: Bin[], parts: number[], goal: number, steps: Steps): number[] {
    const { chance, problem, keys } = this;
    const order = chance.below(ORDERS);
    for (const part of parts) {
      const way = problem.parts[part]?.ways[0] ?? { width: 0, length: 0 };
      const key =
        order < 3
          ? way.width * way.length
          : order === 3
            ? Math.max(way.width, way.length)
            : order === 4
              ? way.width
              : order === 5
                ? way.length
                : order === 6
                  ? Math.min(way.width, way.length)
                  : 1;
      keys[part] = key * (1 - NOISE * chance.next());
    }
    parts.sort((a, b) => (keys[b] as number) - (keys[a] as number) || a - b);
    const fit = chance.below(3);
    const split = chance.below(4);
    const out: number[] = [];
    let spent = 0;
    for (const bin of bins) spent += problem.bins[bin.type]?.cost ?? 0;
    for (const part of parts) {
      const at = this.place(bins, part, fit, split, steps);
      if (at) continue;
      const opened = this.open(bins, part, goal - spent);
      if (opened >= 0 && this.place(bins, part, fit, split, steps)) spent += problem.bins[opened]?.cost ?? 0;
      else out.push(part);
    }
    return out;
  }

  /** A new bin for a part, if there is one within the cost; its type, or −1. */
  private open(bins: Bin[], part: number, within: number): number {
    const { problem, chance } = this;
    const ways = problem.parts[part]?.ways ?? [];
    const types = problem.bins.flatMap((bin, type) => {
      if (bin.cost > within || !ways.some((way) => way.width <= bin.width && way.length <= bin.length)) return [];
      if (bins.reduce((n, other) => n + (other.type === type ? 1 : 0), 0) >= bin.most) return [];
      return [type];
    });
    if (types.length === 0) return -1;
    const free = types.filter((type) => problem.bins[type]?.cost === 0);
    const among = free.length > 0 ? free : types;
    const type = among[chance.below(among.length)] as number;
    bins.push(this.empty(type));
    return type;
  }

  private place(bins: Bin[], part: number, fit: number, split: number, steps: Steps): boolean {
    const { chance, problem } = this;
    const ways = problem.parts[part]?.ways ?? [];
    let least = Number.POSITIVE_INFINITY;
    let [foundBin, foundFree, foundWay] = [-1, -1, -1];
    steps.left -= PER_PART;
    for (let b = 0; b < bins.length; b += 1) {
      const { frees } = bins[b] as Bin;
      steps.left -= frees.length;
      for (let f = 0; f < frees.length; f += 1) {
        const free = frees[f] as Free;
        for (let w = 0; w < ways.length; w += 1) {
          const way = ways[w] as { width: number; length: number };
          const over = free.width - way.width;
          const beyond = free.length - way.length;
          if (over < 0 || beyond < 0) continue;
          const score =
            fit === 0 ? free.width * free.length : fit === 1 ? Math.min(over, beyond) : Math.max(over, beyond);
          if (score < least && chance.next() > BLINK) {
            least = score;
            foundBin = b;
            foundFree = f;
            foundWay = w;
          }
        }
      }
    }
    if (foundBin < 0) return false;
    const bin = bins[foundBin] as Bin;
    const free = bin.frees[foundFree] as Free;
    const way = ways[foundWay] as { width: number; length: number };
    const across = this.across(free, way, split);
    bins[foundBin] = this.bin(bin.type, put(free, part, foundWay, way, across, problem.stages));
    return true;
  }

  /** Whether the direction of cutting changes before the part is cut off. */
  private across(free: Free, way: { width: number; length: number }, split: number): boolean {
    const { rip } = free.owner;
    const first = free.above === null && free.owner.kids.length === 0;
    if (!first && free.stage + 1 > this.problem.stages) return false;
    const over = free.width - way.width;
    const beyond = free.length - way.length;
    // Rips first leave `over` × the whole length in one piece.
    const byRip = over * free.length;
    const byCross = beyond * free.width;
    const ripFirst =
      split === 0
        ? Math.max(byRip, beyond * way.width) >= Math.max(byCross, over * way.length)
        : split === 1
          ? over < beyond
          : split === 2
            ? this.chance.next() < 0.5
            : rip;
    return ripFirst !== rip;
  }
}

const HISTORY = 200;
const ROOMY = 0.02;
const ORDERS = 8;
const NOISE = 0.3;
const BLINK = 0.02;
