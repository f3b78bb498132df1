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
/** After so many times in vain they are sought no more, for all parts and for some. */
const PATIENCE = { first: 20, later: 4 };

const POWER = 3;
const TRIES = 4;

/** What is cut, and what parts of each kind are left. */
interface State {
  readonly bins: readonly Packed[];
  readonly left: readonly (readonly number[])[];
}

const countOf = ({ left }: State): number => left.reduce((sum, parts) => sum + parts.length, 0);

/** A bin that was found, and how often each kind is in it. */
interface Known extends Packed, Pattern {}

/**
 * Bins from mixtures: bins that go well together are gathered and mixed in whatever shares cost least; one that has a large share is filled
 * as it is, and what remains is mixed anew, until few parts remain or the mixture costs too much.
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

  /** Bins for as many parts as can be told, so that `goal` may be kept; `few` parts are left over. Null when no mixture keeps it. */
  down(goal: number, steps: Steps): readonly Packed[] | null {
    const begin: State = { bins: [], left: this.kinds };
    const mixture = this.mixed(begin, 0, steps, PATIENCE.first);
    if (roundedUp(mixture.cost, this.costs) > goal) return null;
    let [state, shares] = [begin, mixture.shares()];
    this.turn += 1;
    while (countOf(state) > 0 && steps.left > 0) {
      const next = this.next(state, shares, goal, steps);
      if (next === null) break;
      ({ state, shares } = next);
    }
    return state.bins;
  }

  /** After one more choice, the first after which a mixture of what remains can still keep the goal. */
  private next({ bins, left }: State, shares: readonly Share<Known>[], goal: number, steps: Steps) {
    for (const chosen of this.choices(shares)) {
      const state = { bins: [...bins], left: left.map((parts) => [...parts]) };
      for (const { pattern, times } of chosen)
        for (let n = 0; n < Math.max(1, Math.floor(times + 1 - NEARLY)); n += 1) {
          const made = this.made(pattern, state.left);
          if (made !== null) state.bins.push(made);
        }
      if (countOf(state) === 0) return { state, shares: [] };
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
    for (const known of this.known.values()) mixture.offer(known);
    let vain = 0;
    for (let round = 0; round < ROUNDS && vain < (finder.exact ? 1 : patience) && steps.left > 0; round += 1) {
      mixture.settle(steps);
      if (bins.length === 0) (this as any).last = mixture.cost;
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
    const key = ({ times }: Share<Known>): number =>
      this.turn === 1 ? -times : -Math.log(1 - this.chance.next()) / times ** POWER;
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
