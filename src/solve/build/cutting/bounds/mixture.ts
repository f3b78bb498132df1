import type { BinType } from "../search/problem.ts";
import type { Steps } from "../search/steps.ts";
import type { Pattern } from "./knapsack.ts";
import { type Column, Simplex } from "./simplex.ts";

const SMALL = 1e-7;
/** So much less than wanted is enough, for each kind another bit: where several would run out at once the mixture might change for ever. */
const LESS = 1e-6;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** A share, whole or not, of a pattern. */
export interface Share<P extends Pattern> {
  readonly pattern: P;
  readonly times: number;
}

interface Entry<P extends Pattern> extends Column {
  readonly pattern?: P;
}

/** Patterns in whatever share at the least cost, so that of each kind there are as many as wanted or more. */
export class Mixture<P extends Pattern> {
  private readonly lp: Simplex<Entry<P>>;
  private readonly columns: Entry<P>[] = [];
  private readonly costs: readonly number[];
  private readonly wanted: readonly number[];
  private readonly dearest: number;
  private readonly rows: number;
  /** The row of each kind, of those that are wanted. */
  private readonly rowOf = new Map<number, number>();
  /** The row of each bin of which there are only some. */
  private readonly rowOfBin = new Map<number, number>();

  /** `wanted` is a number for each kind, `bins` what there is. */
  constructor(bins: readonly BinType[], costs: readonly number[], wanted: readonly number[]) {
    this.costs = costs;
    this.wanted = wanted;
    this.dearest = Math.max(1, ...costs);
    const right: number[] = [];
    for (const [kind, count] of wanted.entries())
      if (count > 0) this.rowOf.set(kind, right.push(count - LESS * (1 + ((kind * GOLDEN) % 1))) - 1);
    for (const [type, { most }] of bins.entries())
      if (Number.isFinite(most)) this.rowOfBin.set(type, right.push(most) - 1);
    this.rows = right.length;
    // To begin with every part has a bin dearer than any; nothing of it remains where the bins suffice.
    this.lp = new Simplex(
      right,
      right.map((_, i): Entry<P> => ({ cost: i < this.rowOf.size ? 2 * this.dearest : 0, rows: [[i, 1]] })),
    );
  }

  get cost(): number {
    return this.lp.cost;
  }

  /** What one more of each kind would cost: 0 where none is wanted. */
  prices(): readonly number[] {
    const prices = this.lp.prices();
    return this.wanted.map((_, kind) => Math.max(0, prices[this.rowOf.get(kind) ?? -1] ?? 0));
  }

  /** What one more bin of each type would cost: dearer than it is where there are only some. */
  binCosts(): readonly number[] {
    const prices = this.lp.prices();
    return this.costs.map((cost, type) => cost - Math.min(0, prices[this.rowOfBin.get(type) ?? -1] ?? 0));
  }

  /** Offers a pattern: it comes in when all is settled, if it makes something cheaper. */
  offer(pattern: P): void {
    const rows = [...pattern.counts].flatMap(([kind, count]): [number, number][] => {
      const row = this.rowOf.get(kind);
      return row === undefined ? [] : [[row, count]];
    });
    if (rows.length === 0) return;
    const limit = this.rowOfBin.get(pattern.type);
    if (limit !== undefined) rows.push([limit, 1]);
    this.columns.push({ cost: this.costs[pattern.type] ?? 0, rows, pattern });
  }

  /** Brings the patterns in that make it cheaper, of those last offered; whether there were any. */
  settle(steps: Steps, last = this.columns.length): boolean {
    const among = last < this.columns.length ? this.columns.slice(-last) : this.columns;
    const entries = among.reduce((sum, { rows }) => sum + rows.length, 0);
    let changed = false;
    for (let turns = 0; turns < 50 * this.rows; turns += 1) {
      const prices = this.lp.prices();
      steps.left -= (this.rows * this.rows) / 5 + entries / 10;
      const row = prices.findIndex((price, i) => (i < this.rowOf.size ? price < -SMALL : price > SMALL));
      if (row >= 0) {
        if (!this.lp.enter({ cost: 0, rows: [[row, row < this.rowOf.size ? -1 : 1]] })) break;
        continue;
      }
      let [entering, most]: [Entry<P> | undefined, number] = [undefined, SMALL * this.dearest];
      for (const column of among) {
        const value = worth(prices, column);
        if (value > most) [entering, most] = [column, value];
      }
      if (entering === undefined || !this.lp.enter(entering)) break;
      changed = true;
    }
    return changed;
  }

  /** The patterns in it. */
  shares(): readonly Share<P>[] {
    return [...this.lp.solution()].flatMap(([{ pattern }, times]) =>
      pattern === undefined || times <= SMALL ? [] : [{ pattern, times }],
    );
  }
}

function worth(prices: Float64Array, { rows, cost }: Column): number {
  let sum = -cost;
  for (const [row, amount] of rows) sum += (prices[row] as number) * amount;
  return sum;
}
