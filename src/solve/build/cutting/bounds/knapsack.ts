import type { Problem } from "../search/problem.ts";
import { type Grid, gridOf, pointAt } from "./grid.ts";

/** No more points than this in each direction. */
const MOST = 120;

/** What one bin gives at most. */
export interface Pattern {
  readonly type: number;
  /** How often each kind is in it. */
  readonly counts: ReadonlyMap<number, number>;
}

/** Finds the most valuable pattern of each bin. */
export interface Knapsack {
  /** Steps of one `solve`. */
  readonly work: number;
  /** The value of the best pattern of each bin; values are whole numbers, so that this is exact. */
  readonly solve: (values: readonly number[]) => readonly number[];
  /** The best pattern of a bin, after `solve`. */
  readonly pattern: (type: number) => Pattern;
}

/**
 * The most valuable pieces that edge-to-edge cuts take from a bin, each kind as often as one likes (P. C. Gilmore and R. E. Gomory, 1966):
 * for every size of piece the best of a part, a rip and a crosscut.
 */
export class GuillotineKnapsack implements Knapsack {
  readonly work: number;
  private readonly x: Grid;
  private readonly y: Grid;
  private readonly best: Float64Array;
  private readonly cut: Int32Array;
  private readonly places: readonly { readonly kind: number; readonly i: number; readonly j: number }[];
  private readonly bins: readonly { readonly i: number; readonly j: number }[];

  /** `kinds` are the parts of which one stands for all equal ones. */
  constructor(problem: Problem, kinds: readonly number[]) {
    const ways = kinds.map((kind) => problem.parts[kind]?.ways ?? []);
    const all = ways.flat();
    const widths = all.map((way) => way.width);
    const lengths = all.map((way) => way.length);
    const [wide, long] = [problem.bins.map((bin) => bin.width), problem.bins.map((bin) => bin.length)];
    const x = gridOf(widths, wide, MOST);
    const y = gridOf(lengths, long, MOST);
    this.x = x.grid;
    this.y = y.grid;
    const at = (width: number, length: number) => ({
      i: pointAt(x.grid, Math.floor(width / x.unit)),
      j: pointAt(y.grid, Math.floor(length / y.unit)),
    });
    this.places = ways.flatMap((each, kind) => each.map((way) => ({ kind, ...at(way.width, way.length) })));
    this.bins = problem.bins.map((bin) => at(bin.width, bin.length));
    const [nx, ny] = [x.grid.points.length, y.grid.points.length];
    this.best = new Float64Array(nx * ny);
    this.cut = new Int32Array(nx * ny);
    this.work = ny * x.grid.near.length + nx * y.grid.near.length + nx * ny;
  }

  solve(values: readonly number[]): readonly number[] {
    const { x, y, best, cut } = this;
    const ny = y.points.length;
    best.fill(0);
    // −1: nothing; −2 − kind: a part; else a cut: 2 × the pair, plus 1 for a crosscut.
    cut.fill(-1);
    for (const { kind, i, j } of this.places) {
      const value = values[kind] ?? 0;
      const at = i * ny + j;
      if (value > (best[at] as number)) {
        best[at] = value;
        cut[at] = -2 - kind;
      }
    }
    for (let i = 1; i < x.points.length; i += 1)
      for (let j = 1; j < ny; j += 1) {
        const at = i * ny + j;
        let [value, how] = [best[at] as number, cut[at] as number];
        if ((best[at - 1] as number) > value) [value, how] = [best[at - 1] as number, cut[at - 1] as number];
        if ((best[at - ny] as number) > value) [value, how] = [best[at - ny] as number, cut[at - ny] as number];
        for (let p = x.from[i] as number; p < (x.from[i + 1] as number); p += 1) {
          const sum =
            (best[(x.near[p] as number) * ny + j] as number) + (best[(x.far[p] as number) * ny + j] as number);
          if (sum > value) [value, how] = [sum, 2 * p];
        }
        const row = i * ny;
        for (let p = y.from[j] as number; p < (y.from[j + 1] as number); p += 1) {
          const sum = (best[row + (y.near[p] as number)] as number) + (best[row + (y.far[p] as number)] as number);
          if (sum > value) [value, how] = [sum, 2 * p + 1];
        }
        best[at] = value;
        cut[at] = how;
      }
    return this.bins.map(({ i, j }) => best[i * ny + j] as number);
  }

  pattern(type: number): Pattern {
    const { x, y, best, cut } = this;
    const ny = y.points.length;
    const counts = new Map<number, number>();
    const take = (i: number, j: number): void => {
      const at = i * ny + j;
      const how = cut[at] as number;
      if (how === -1 || best[at] === 0) return;
      if (how < -1) {
        counts.set(-2 - how, (counts.get(-2 - how) ?? 0) + 1);
        return;
      }
      const p = how >> 1;
      // A smaller piece may have handed its cut on: the pair still fits, and is worth as much.
      if (how & 1) {
        take(i, y.near[p] as number);
        take(i, y.far[p] as number);
      } else {
        take(x.near[p] as number, j);
        take(x.far[p] as number, j);
      }
    };
    const { i = 0, j = 0 } = this.bins[type] ?? {};
    take(i, j);
    return { type, counts };
  }
}
