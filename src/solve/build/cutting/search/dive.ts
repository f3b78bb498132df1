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

/** A bin that was found, and how often each kind is in it. */
interface Known extends Packed, Pattern {}

/** Bins that are filled already, and the parts that remain. */
export interface Begun {
  readonly bins: readonly Packed[];
  readonly rest: readonly number[];
}

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
  down(goal: number, few: number, prices: readonly number[], steps: Steps): Begun | null {
    const left = this.kinds.map((parts) => [...parts]);
    const bins: Packed[] = [];
    const count = (): number => left.reduce((sum, parts) => sum + parts.length, 0);
    this.turn += 1;
    while (count() > few && steps.left > 0) {
      const within = goal - sumOf(bins, this.problem);
      const mixture = this.mixed(left, bins, bins.length === 0 ? { prices, within: 0 } : { within }, steps);
      if (roundedUp(mixture.cost, this.costs) > within) break;
      for (const { pattern, times } of this.chosen(mixture.shares()))
        for (let n = 0; n < Math.max(1, Math.floor(times + 1 - NEARLY)); n += 1) {
          const made = this.made(pattern, left);
          if (made !== null) bins.push(made);
        }
    }
    return bins.length === 0 ? null : { bins, rest: left.flat() };
  }

  /** A mixture for parts that are left, with new patterns while it costs more than `within`. */
  private mixed(
    left: readonly (readonly number[])[],
    bins: readonly Packed[],
    { prices, within }: { readonly prices?: readonly number[]; readonly within: number },
    steps: Steps,
  ): Mixture<Known> {
    const { problem, costs, finder } = this;
    const used = (type: number): number => bins.filter((bin) => bin.type === type).length;
    const mixture = new Mixture<Known>(
      problem.bins.map((bin, type) => ({ ...bin, most: bin.most - used(type) })),
      costs,
      left.map((parts) => parts.length),
    );
    for (const known of this.known.values()) mixture.offer(known);
    mixture.settle(steps);
    if (prices !== undefined)
      for (const known of this.learn(finder.find({ left, prices, costs }, steps))) mixture.offer(known);
    let vain = 0;
    for (let round = 0; round < ROUNDS && vain < finder.patience && steps.left > 0; round += 1) {
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

  /** All that are nearly whole, or one: the first time the nearest, later by chance among the near. */
  private chosen(shares: readonly Share<Known>[]): readonly Share<Known>[] {
    const whole = shares.filter(({ times }) => times >= NEARLY);
    if (whole.length > 0) return whole;
    const [nearest] = shares.toSorted((a, b) => b.times - a.times);
    if (this.turn === 1) return nearest === undefined ? [] : [nearest];
    const weigh = ({ times }: Share<Known>): number => times ** 3;
    let place = this.chance.next() * shares.reduce((sum, share) => sum + weigh(share), 0);
    const found = shares.find((share) => {
      place -= weigh(share);
      return place <= 0;
    });
    return [found ?? nearest].filter((share) => share !== undefined);
  }

  /** A bin like a known one, of parts that are left: these are taken away. Null where none of its kinds is left. */
  private made({ type, root }: Known, left: readonly number[][]): Packed | null {
    const own = new Map(partsIn(root).map((part) => [part, left[this.kindOf[part] as number]?.shift()]));
    const there = without(root, (part) => own.get(part) !== undefined, false, root.width, root.length);
    return there && { type, root: renamed(there, (part) => own.get(part) ?? part, this.problem) };
  }
}
