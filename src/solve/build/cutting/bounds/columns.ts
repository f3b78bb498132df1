/**
 * Fewest bins of one size by column generation: the linear programme over all edge-to-edge patterns, solved by the simplex method with patterns
 * made as they are wanted. Its prices, rounded to whole numbers, are proven by one more exact pattern: the bound does not lean on doubles.
 */
import { type Patterns, patternsOf, type Valued } from "./patterns.ts";

/** Prices are whole numbers of this part of a bin. */
const PART = 1_000_000;
const NEARLY = 1e-9;

export interface Kind extends Valued {
  /** How many are needed. */
  readonly count: number;
}

/**
 * At least so many bins, for edge-to-edge cuts; 0 where nothing could be worked out within `effort`. `known`: how often each kind is in each bin of a
 * packing that was found, to begin with; its number is what a better bound need not be looked for beyond.
 */
export function binsByPatterns(
  kinds: readonly Kind[],
  width: number,
  length: number,
  known: readonly (readonly number[])[],
  effort: number,
): Relaxed {
  const patterns = patternsOf(kinds, width, length);
  if (patterns === null || kinds.length === 0) return { bound: 0, patterns: [] };
  let best = 0;
  const turns = Math.floor(effort / patterns.effort);
  const basis = new Basis(kinds);
  for (const counts of known) {
    const prices = basis.prices();
    if (counts.reduce((sum, count, i) => sum + count * (prices[i] as number), 0) > 1 + NEARLY) basis.enter(counts);
  }
  for (let turn = 0; turn < turns; turn += 1) {
    const prices = basis.prices();
    const { value, counts } = patterns.best(prices);
    const farley = prices.reduce((sum, price, i) => sum + price * (kinds[i] as Kind).count, 0) / Math.max(1, value);
    // Worth proving where it would raise what is known.
    if (Math.ceil(farley - 1e-7) > best) best = Math.max(best, proven(kinds, patterns, prices));
    if (value <= 1 + NEARLY || best >= known.length || Math.ceil(basis.cost() - 1e-7) <= best) break;
    basis.enter(counts);
  }
  return { bound: best, patterns: basis.patterns() };
}

export interface Relaxed {
  /** No fewer bins will do. */
  readonly bound: number;
  /** How often the programme uses each pattern, in fractions. */
  readonly patterns: readonly { readonly counts: ArrayLike<number>; readonly amount: number }[];
}

/** With whole prices no pattern is worth more than `value`, exactly; so all parts take at least their worth over that. */
function proven(kinds: readonly Kind[], patterns: Patterns, prices: Float64Array): number {
  const whole = prices.map((price) => Math.max(0, Math.floor(price * PART)));
  const { value } = patterns.best(whole);
  const worth = kinds.reduce((sum, { count }, i) => sum + count * (whole[i] as number), 0);
  return value === 0 ? 0 : Math.ceil(worth / value);
}

/** The basis of the simplex method: begun with each kind alone in its bins. */
class Basis {
  private readonly size: number;
  private readonly inverse: Float64Array;
  private readonly amounts: Float64Array;

  constructor(kinds: readonly Kind[]) {
    this.size = kinds.length;
    this.inverse = new Float64Array(this.size * this.size);
    for (let i = 0; i < this.size; i += 1) this.inverse[i * this.size + i] = 1;
    this.amounts = Float64Array.from(kinds, ({ count }) => count);
    this.costs = new Float64Array(this.size).fill(1);
    this.columns = kinds.map((_, i) => Float64Array.from(kinds, (__, j) => (i === j ? 1 : 0)));
  }
  private readonly columns: Float64Array[];
  private readonly costs: Float64Array;

  patterns(): Relaxed["patterns"] {
    return this.columns.flatMap((counts, i) =>
      (this.costs[i] as number) > 0 ? [{ counts, amount: this.amounts[i] as number }] : [],
    );
  }

  cost(): number {
    return this.amounts.reduce((sum, amount, i) => sum + amount * (this.costs[i] as number), 0);
  }

  /** What a part of each kind is worth, in bins; never below zero, since a part too many does no harm. */
  prices(): Float64Array {
    for (let turn = 0; ; turn += 1) {
      const prices = new Float64Array(this.size);
      for (let i = 0; i < this.size; i += 1)
        for (let j = 0; j < this.size; j += 1)
          prices[j] = (prices[j] as number) + (this.costs[i] as number) * (this.inverse[i * this.size + j] as number);
      const negative = prices.findIndex((price) => price < -NEARLY);
      if (negative < 0) return prices.map((price) => Math.max(0, price));
      // One part more than needed of this kind is allowed to be left over.
      const surplus = new Float64Array(this.size);
      surplus[negative] = -1;
      // Where amounts are nothing, exchanges may go in a circle: any prices give a bound, if not the best.
      if (turn > 2 * this.size || !this.exchange(surplus, 0)) return prices.map((price) => Math.max(0, price));
    }
  }

  enter(counts: ArrayLike<number>): void {
    this.exchange(Float64Array.from(counts), 1);
  }

  private exchange(column: Float64Array, cost: number): boolean {
    const { size, inverse, amounts, costs } = this;
    const entering = new Float64Array(size);
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let j = 0; j < size; j += 1) sum += (inverse[i * size + j] as number) * (column[j] as number);
      entering[i] = sum;
    }
    let [leaves, least] = [-1, Number.POSITIVE_INFINITY];
    for (let i = 0; i < size; i += 1) {
      if ((entering[i] as number) <= NEARLY) continue;
      const ratio = (amounts[i] as number) / (entering[i] as number);
      if (ratio < least - 1e-12) [leaves, least] = [i, ratio];
    }
    if (leaves < 0) return false;
    const pivot = entering[leaves] as number;
    for (let j = 0; j < size; j += 1) inverse[leaves * size + j] = (inverse[leaves * size + j] as number) / pivot;
    for (let i = 0; i < size; i += 1) {
      const factor = entering[i] as number;
      if (i === leaves || factor === 0) continue;
      for (let j = 0; j < size; j += 1)
        inverse[i * size + j] = (inverse[i * size + j] as number) - factor * (inverse[leaves * size + j] as number);
      amounts[i] = Math.max(0, (amounts[i] as number) - factor * least);
    }
    amounts[leaves] = least;
    costs[leaves] = cost;
    this.columns[leaves] = column;
    return true;
  }
}
