import type { Relaxed } from "../bounds/columns.ts";
import { kindsOf } from "../bounds/kinds.ts";
import type { Pattern } from "../bounds/knapsack.ts";
import { Mixture, type Share } from "../bounds/mixture.ts";
import { roundedUp } from "../bounds/round.ts";
import { Chance } from "./chance.ts";
import { type Finder, finderFor } from "./finder.ts";
import { renamed, without } from "./free.ts";
import { sumOf } from "./joint.ts";
import { type Packed, type Problem, partsIn } from "./problem.ts";
import type { Steps } from "./steps.ts";

/** Shares of a pattern from which on it is cut whole at once. */
const NEARLY = 0.95;
/** Patterns are sought so often at most for one mixture. */
const ROUNDS = 300;
/** With more bins than this no new ones are sought. */
const MOST = 30_000;
/** After so many times in vain they are sought no more, for all parts and for some. */
const PATIENCE = { first: 20, later: 4 };

/** So many choices are tried one after another. */
const TRIES = 4;

/** What is cut, and what parts of each kind are left. */
interface State {
  readonly bins: readonly Packed[];
  readonly left: readonly (readonly number[])[];
}

/** What is cut, and the patterns for what is left. */
interface Choice {
  readonly state: State;
  readonly shares: readonly Share<Known>[];
}

/** A bin that was found, and how often each kind is in it. */
interface Known extends Packed, Pattern {}

/** A bin counts as holding no more of a kind than are left. */
function clipped(known: Known, left: State["left"]): Known {
  const over = [...known.counts].some(([kind, count]) => count > (left[kind]?.length ?? 0));
  if (!over) return known;
  const counts = [...known.counts].map(([kind, count]) => [kind, Math.min(count, left[kind]?.length ?? 0)] as const);
  return { ...known, counts: new Map(counts) };
}

/**
 * Bins from mixtures: bins that were found are mixed in whatever shares cost least, with new ones that make the mixture cheaper; one that has a
 * large share is filled as it is, and what remains is mixed anew, until nothing remains or every mixture costs too much.
 */
export class Dive {
  private readonly problem: Problem;
  private readonly costs: readonly number[];
  private readonly kinds: readonly (readonly number[])[];
  private readonly kindOf: readonly number[];
  private readonly finder: Finder;
  private readonly known = new Map<string, Known>();
  private readonly chance = new Chance(1);
  private turn = 0;

  constructor(problem: Problem) {
    this.problem = problem;
    this.costs = problem.bins.map((bin) => bin.cost);
    this.kinds = kindsOf(problem).map(({ parts }) => parts);
    const kindOf: number[] = [];
    for (const [kind, parts] of this.kinds.entries()) for (const part of parts) kindOf[part] = kind;
    this.kindOf = kindOf;
    this.finder = finderFor(problem);
  }

  /** With fewer steps it comes to nothing. */
  get least(): number {
    return this.finder.least;
  }

  /** Learns from what bounded the cost. */
  begin(relaxed: Relaxed, steps: Steps): void {
    this.learn(this.finder.first(relaxed, this.kinds, steps));
  }

  /** Takes bins up among those that are mixed; returns those that are new. */
  learn(bins: readonly Packed[]): readonly Known[] {
    return bins.flatMap((bin) => {
      const counts = new Map<number, number>();
      for (const kind of partsIn(bin.root).map((part) => this.kindOf[part] as number))
        counts.set(kind, (counts.get(kind) ?? 0) + 1);
      const key = `${bin.type}: ${[...counts].toSorted(([a], [b]) => a - b).join(" ")}`;
      if (this.known.has(key)) return [];
      const made = { ...bin, counts };
      this.known.set(key, made);
      return [made];
    });
  }

  /** Bins for all parts or some, while a mixture for the others keeps the cost within `goal`. Null when even that for all does not. */
  down(goal: number, steps: Steps): readonly Packed[] | null {
    const begin: State = { bins: [], left: this.kinds };
    const mixture = this.mixed(begin, 0, steps, PATIENCE.first);
    if (roundedUp(mixture.cost, this.costs) > goal) return null;
    this.turn += 1;
    let { bins } = begin;
    for (
      let at: Choice | null = { state: begin, shares: mixture.shares() };
      at !== null;
      at = this.next(at, goal, steps)
    )
      ({ bins } = at.state);
    return bins;
  }

  /** After one more choice, the first after which a mixture for what remains still keeps the goal; null where there is none. */
  private next({ state: { bins, left }, shares }: Choice, goal: number, steps: Steps): Choice | null {
    for (const chosen of this.choices(shares)) {
      const state = { bins: [...bins], left: left.map((parts) => [...parts]) };
      for (const { pattern, times } of chosen)
        for (let n = 0; n < Math.max(1, Math.floor(times + 1 - NEARLY)); n += 1) {
          const used = state.bins.filter(({ type }) => type === pattern.type).length;
          const made = used < (this.problem.bins[pattern.type]?.most ?? 0) ? this.made(pattern, state.left) : null;
          if (made !== null) state.bins.push(made);
        }
      if (steps.left <= 0) return null;
      if (state.bins.length === bins.length) continue;
      const within = goal - sumOf(state.bins, this.problem);
      const mixture = this.mixed(state, within, steps, PATIENCE.later);
      if (roundedUp(mixture.cost, this.costs) <= within) return { state, shares: mixture.shares() };
    }
    return null;
  }

  /** A mixture for parts that are left, with new patterns while it costs more than `within`. */
  private mixed({ bins, left }: State, within: number, steps: Steps, patience: number): Mixture<Known> {
    const { problem, costs, finder } = this;
    const used = (type: number): number => bins.filter((bin) => bin.type === type).length;
    const mixture = new Mixture<Known>(
      problem.bins.map((bin, type) => ({ ...bin, most: bin.most - used(type) })),
      costs,
      left.map((parts) => parts.length),
    );
    for (const known of this.known.values()) mixture.offer(clipped(known, left));
    let vain = 0;
    for (let round = 0; round < ROUNDS && vain < (finder.exact ? 1 : patience) && steps.left > 0; round += 1) {
      if (this.known.size > MOST) break;
      mixture.settle(steps);
      if (roundedUp(mixture.cost, costs) <= within) break;
      const asked = { left, prices: mixture.prices(), costs: mixture.binCosts() };
      const found = this.learn(finder.find(asked, steps));
      for (const known of found) mixture.offer(known);
      vain = found.length === 0 ? vain + 1 : 0;
    }
    mixture.settle(steps);
    return mixture;
  }

  /** All that are nearly whole, then single ones: the first time the nearest, later by chance and the near more often. */
  private choices(shares: readonly Share<Known>[]): readonly (readonly Share<Known>[])[] {
    const whole = shares.filter(({ times }) => times >= NEARLY);
    const key = ({ times }: Share<Known>): number => {
      if (this.turn === 1) return -times;
      const luck = this.chance.next();
      return luck / (1 - luck) / (times * times * times);
    };
    const keys = new Map(shares.map((share) => [share, key(share)]));
    const singles = shares
      .toSorted((a, b) => (keys.get(a) ?? 0) - (keys.get(b) ?? 0))
      .slice(0, TRIES)
      .map((share) => [share]);
    return whole.length > 0 ? [whole, ...singles] : singles;
  }

  /** A bin like a known one, of parts that are left: these are taken away. Null where none of its kinds is left. */
  private made({ type, root }: Known, left: readonly number[][]): Packed | null {
    const own = new Map(partsIn(root).map((part) => [part, left[this.kindOf[part] as number]?.shift()]));
    const there = without(root, (part) => own.get(part) !== undefined, false, root.width, root.length);
    return there && { type, root: renamed(there, (part) => own.get(part) ?? part, this.problem) };
  }
}
