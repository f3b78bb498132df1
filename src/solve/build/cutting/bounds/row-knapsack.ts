import type { Row } from "../search/rows.ts";
import { gridOf, pointAt } from "./grid.ts";
import type { Kind } from "./kinds.ts";
import type { Knapsack, Pattern } from "./knapsack.ts";

/** No more points than this. */
const MOST = 6000;

/** The most valuable parts in a row, each kind no oftener than there are parts of it: kind after kind, for every length that a row may have. */
export class RowKnapsack implements Knapsack {
  readonly work: number;
  private readonly best: Float64Array;
  /** For each kind and point: where a row ends when one part of the kind is taken off; −1 where it has no room. */
  private readonly less: Int32Array;
  /** For each kind and point: how many of the kind are in the best row. */
  private readonly taken: Int32Array;
  private readonly counts: readonly number[];
  private readonly bins: readonly number[];

  constructor(row: Row, kinds: readonly Kind[]) {
    const sizes = kinds.map(({ parts: [part = 0] }) => row.sizes[part] ?? 0);
    const { grid, unit } = gridOf(sizes, row.rooms, MOST);
    const n = grid.points.length;
    const rounded = (size: number): number => (unit === 1 ? size : Math.floor(size / unit));
    this.bins = row.rooms.map((room) => pointAt(grid, rounded(room)));
    this.counts = kinds.map(({ parts }) => parts.length);
    this.best = new Float64Array(n);
    this.less = new Int32Array(n * kinds.length).fill(-1);
    this.taken = new Int32Array(n * kinds.length);
    for (const [kind, size] of sizes.entries()) {
      let to = 0;
      for (let i = 0; i < n; i += 1) {
        const left = (grid.points[i] as number) - rounded(size);
        if (left < 0) continue;
        while (to + 1 < n && (grid.points[to + 1] as number) <= left) to += 1;
        this.less[kind * n + i] = to;
      }
    }
    this.work = 4 * n * kinds.length;
  }

  solve(values: readonly number[]): readonly number[] {
    const { best, less, taken, counts } = this;
    const n = best.length;
    best.fill(0);
    for (const [kind, count] of counts.entries()) {
      const value = values[kind] ?? 0;
      const from = kind * n;
      // From the end on, so that what stands before is without this kind.
      for (let i = n - 1; i >= 0; i -= 1) {
        let [most, how] = [best[i] as number, 0];
        if (value > 0)
          for (let times = 1, to = less[from + i] as number; times <= count && to >= 0; times += 1) {
            const sum = (best[to] as number) + times * value;
            if (sum > most) [most, how] = [sum, times];
            to = less[from + to] as number;
          }
        best[i] = most;
        taken[from + i] = how;
      }
    }
    return this.bins.map((i) => best[i] as number);
  }

  pattern(type: number): Pattern {
    const n = this.best.length;
    const counts = new Map<number, number>();
    let at = this.bins[type] ?? 0;
    for (let kind = this.counts.length - 1; kind >= 0; kind -= 1) {
      const times = this.taken[kind * n + at] as number;
      if (times > 0) counts.set(kind, times);
      for (let time = 0; time < times; time += 1) at = this.less[kind * n + at] as number;
    }
    return { type, counts };
  }
}
