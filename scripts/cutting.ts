// What the benchmark of layouts measures: the search of the program and a plain heuristic, on lists in the format of the open data.
import { Chance } from "../src/solve/build/cutting/search/chance.ts";
import { leaf, type Packed, type Piece, type Problem } from "../src/solve/build/cutting/search/problem.ts";
import { fewestBins } from "../src/solve/build/cutting/search/solve.ts";

export interface Instance {
  readonly cl?: number;
  readonly id?: string;
  readonly n?: number;
  readonly i?: number;
  readonly W: number;
  readonly H: number;
  /** Width, height, copies. */
  readonly items: readonly (readonly [number, number, number?])[];
}

export type Effort = "quick" | "normal" | "thorough";

export function problemOf({ W, H, items }: Instance, turn: boolean): Problem {
  const parts = items.flatMap(([width, length, copies = 1]) => {
    const ways = [{ width, length }, ...(turn && width !== length ? [{ width: length, length: width }] : [])];
    const fitting = ways.filter((way) => way.width <= W && way.length <= H);
    if (fitting.length === 0) throw new Error(`a part of ${width} × ${length} fits no bin of ${W} × ${H}`);
    return Array.from({ length: copies }, () => ({ ways: fitting }));
  });
  return { bins: [{ width: W, length: H, cost: 1, most: Number.POSITIVE_INFINITY }], parts, stages: 3 };
}

/** Solves one list and checks the result piece by piece; `clock` gives seconds of work. */
export function solve(instance: Instance, turn: boolean, effort: Effort, clock: () => number) {
  const problem = problemOf(instance, turn);
  const start = clock();
  const { bins, bound } = fewestBins(problem, effort);
  const seconds = clock() - start;
  verify(problem, bins);
  return { bins: bins.length, bound, proven: bins.length === bound, seconds };
}

/** Each part once, whole, and inside strips that lie inside their bin. Throws where that is not so. */
function verify(problem: Problem, bins: readonly Packed[]): void {
  const seen = new Set<number>();
  const check = (piece: Piece, width: number, length: number): void => {
    if (piece.part >= 0) {
      const size = problem.parts[piece.part]?.ways[piece.way] ?? leaf(-1, 0, Infinity, Infinity);
      if (size.width > width || size.length > length || seen.has(piece.part)) throw new Error("a part is misplaced");
      seen.add(piece.part);
      return;
    }
    let left = piece.rip ? width : length;
    for (const kid of piece.kids) {
      left -= piece.rip ? kid.width : kid.length;
      if (left < 0) throw new Error("strips are wider than their piece");
      check(kid, piece.rip ? kid.width : width, piece.rip ? length : kid.length);
    }
  };
  for (const { root } of bins) check(root, problem.bins[0]?.width ?? 0, problem.bins[0]?.length ?? 0);
  if (seen.size !== problem.parts.length) throw new Error("a part is missing");
}

/** First fit, decreasing height, on shelves that are stacked first fit: the plain heuristic. Parts are not turned. */
export function shelves({ W, H, items }: Instance): number {
  const parts = items.flatMap(([w, h, n = 1]) => Array.from({ length: n }, () => [w, h] as const));
  const rows: { height: number; left: number }[] = [];
  for (const [w, h] of parts.toSorted((a, b) => b[1] - a[1])) {
    const row = rows.find((each) => each.left >= w);
    if (row) row.left -= w;
    else rows.push({ height: h, left: W - w });
  }
  const bins: number[] = [];
  for (const { height } of rows) {
    const at = bins.findIndex((left) => left >= height);
    if (at < 0) bins.push(H - height);
    else bins[at] = (bins[at] as number) - height;
  }
  return bins.length;
}

/** Lists of one dimension with a known optimum: from the literature, and triplets that fill each bin by construction (Falkenauer 1996). */
export function lengths(): readonly (Instance & { readonly best: number })[] {
  const row = (H: number, list: readonly (readonly [number, number])[], id: string, best: number) => ({
    ...{ id, W: 1, H, best },
    items: list.map(([length, count]) => [1, length, count] as const),
  });
  const bars = [
    ...[1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20],
    ...[2000, 10, 2050, 12, 2100, 14, 2140, 16, 2150, 18, 2200, 20],
  ];
  const pairs = Array.from({ length: bars.length / 2 }, (_, i) => [bars[2 * i] ?? 0, bars[2 * i + 1] ?? 0] as const);
  const chance = new Chance(1996);
  const triplets = Array.from({ length: 20 }, (): [number, number][] => {
    const first = 380 + chance.below(111);
    const second = 250 + chance.below((1000 - first) / 2 - 250 + 1);
    return [
      [first, 1],
      [second, 1],
      [1000 - first - second, 1],
    ];
  });
  return [
    row(5600, pairs, "5600", 73),
    row(
      100,
      [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
      "100",
      453,
    ),
    row(1000, triplets.flat(), "triplets 60", 20),
  ];
}

/** As many parts as of furniture, on sheets of 1220 × 2440. */
export function furniture(count: number): Instance {
  const chance = new Chance(count);
  const side = (): number => 60 + chance.below(540);
  const sizes = Array.from({ length: Math.ceil(count / 3) }, () => [side(), 2 * side()] as const);
  return { id: `${count} parts`, W: 1220, H: 2440, items: sizes.map(([w, h]) => [w, h, 3] as const) };
}
