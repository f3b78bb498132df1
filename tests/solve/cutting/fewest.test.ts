import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Packed, type Piece, type Problem, partsIn } from "../../../src/solve/build/cutting/search/problem.ts";
import { fewestBins } from "../../../src/solve/build/cutting/search/solve.ts";

type Size = readonly [number, number];

const problem = (width: number, length: number, sizes: readonly Size[], turn = false): Problem => ({
  bins: [{ width, length, cost: 1, most: Number.POSITIVE_INFINITY }],
  parts: sizes.map(([w, l]) => ({
    ways: [{ width: w, length: l }, ...(turn && w !== l && l <= width && w <= length ? [{ width: l, length: w }] : [])],
  })),
  stages: 9,
});

/** Each part once, whole, in strips that lie inside their bin: cut from edge to edge. */
function check({ parts, bins }: Problem, packed: readonly Packed[]): void {
  const all = packed.flatMap(({ root }) => partsIn(root)).sort((a, b) => a - b);
  expect(all).toEqual(parts.map((_, i) => i));
  const inside = (piece: Piece, width: number, length: number): void => {
    if (piece.part >= 0) {
      const way = parts[piece.part]?.ways[piece.way];
      expect(way && way.width <= width && way.length <= length).toBe(true);
      return;
    }
    const used = piece.kids.reduce((so, kid) => so + (piece.rip ? kid.width : kid.length), 0);
    expect(used).toBeLessThanOrEqual(piece.rip ? width : length);
    for (const kid of piece.kids) inside(kid, piece.rip ? kid.width : width, piece.rip ? length : kid.length);
  };
  for (const { type, root } of packed) inside(root, bins[type]?.width ?? 0, bins[type]?.length ?? 0);
}

/** The fewest bins by trying everything: which sets of parts one bin gives, whatever the cuts, and how few such sets make up the whole. */
function fewestByHand(width: number, length: number, sizes: readonly Size[]): number {
  const known = new Map<string, boolean>();
  const fits = (set: number, w: number, l: number): boolean => {
    const inside = sizes.flatMap((size, i) => ((set >> i) & 1 ? [size] : []));
    if (inside.length === 0) return true;
    if (inside.some(([a, b]) => a > w || b > l)) return false;
    if (inside.length === 1) return true;
    if (inside.reduce((so, [a, b]) => so + a * b, 0) > w * l) return false;
    const key = `${set} ${w} ${l}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let found = false;
    for (let part = (set - 1) & set; part > 0 && !found; part = (part - 1) & set) {
      for (let x = 1; x < w && !found; x += 1) found = fits(part, x, l) && fits(set & ~part, w - x, l);
      for (let y = 1; y < l && !found; y += 1) found = fits(part, w, y) && fits(set & ~part, w, l - y);
    }
    known.set(key, found);
    return found;
  };
  const whole = 2 ** sizes.length - 1;
  const best = [0];
  for (let set = 1; set <= whole; set += 1) {
    best[set] = Number.POSITIVE_INFINITY;
    for (let bin = set; bin > 0; bin = (bin - 1) & set)
      if (fits(bin, width, length)) best[set] = Math.min(best[set] as number, 1 + (best[set & ~bin] as number));
  }
  return best[whole] as number;
}

const list = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })), {
  minLength: 2,
  maxLength: 6,
});

describe("the fewest bins", () => {
  it("are as few as trying everything finds, and the bound is never above them", () => {
    fc.assert(
      fc.property(list, (sizes) => {
        const asked = problem(9, 9, sizes);
        const { bins, bound } = fewestBins(asked, "quick");
        check(asked, bins);
        const truth = fewestByHand(9, 9, sizes);
        expect(bound).toBeLessThanOrEqual(truth);
        expect(bins.length).toBe(truth);
      }),
      { numRuns: 25, seed: 20261125 },
    );
  }, 120_000);

  it("are the same with a kerf as for parts and bins that are larger by it", () => {
    fc.assert(
      fc.property(list, fc.integer({ min: 1, max: 4 }), (sizes, kerf) => {
        const grown = sizes.map(([w, l]): Size => [7 * w + kerf, 7 * l + kerf]);
        // 7 times as large leaves room for kerfs that are smaller than one part in seven.
        const { bins, bound } = fewestBins(problem(63 + kerf, 63 + kerf, grown), "quick");
        check(problem(63 + kerf, 63 + kerf, grown), bins);
        expect(bound).toBeLessThanOrEqual(bins.length);
        expect(bins.length).toBeGreaterThanOrEqual(fewestBins(problem(9, 9, sizes), "quick").bound);
      }),
      { numRuns: 15, seed: 20261125 },
    );
  });

  it("finds the same plan every time", () => {
    const sizes = Array.from({ length: 30 }, (_, i): Size => [3 + ((i * 7) % 11), 4 + ((i * 5) % 13)]);
    const asked = problem(24, 30, sizes, true);
    expect(fewestBins(asked, "quick")).toEqual(fewestBins(asked, "quick"));
  });

  // Berkey and Wang 1987, class 1, 20 parts, instance 1; best known and bound: 8 bins, or 7 where parts may be turned.
  it("comes to the best known number on a published list", () => {
    const sizes: readonly Size[] = [
      ...([
        [5, 9],
        [4, 2],
        [10, 6],
        [5, 7],
        [6, 3],
        [10, 7],
        [1, 5],
        [3, 5],
        [6, 9],
        [2, 4],
      ] as const),
      ...([
        [6, 7],
        [7, 2],
        [8, 3],
        [4, 10],
        [4, 5],
        [10, 3],
        [8, 3],
        [7, 8],
        [8, 3],
        [8, 7],
      ] as const),
    ];
    for (const [turn, best] of [
      [false, 8],
      [true, 7],
    ] as const) {
      const { bins, bound } = fewestBins({ ...problem(10, 10, sizes, turn), stages: 3 }, "quick");
      expect([bins.length, bound]).toEqual([best, best]);
    }
  });

  // Lists of the literature on cutting stock in one dimension with known optimum: 73 bars of 5600; 453 of 100 (linear programme 452.25).
  it("solves lists of one dimension to the known optimum", () => {
    const lists: readonly (readonly [number, number, readonly Size[]])[] = [
      [
        100,
        453,
        [
          [45, 97],
          [36, 610],
          [31, 395],
          [14, 211],
        ],
      ],
      [
        ...([5600, 73] as const),
        [
          ...([
            [1380, 22],
            [1520, 25],
            [1560, 12],
            [1710, 14],
            [1820, 18],
            [1880, 18],
            [1930, 20],
          ] as const),
          ...([
            [2000, 10],
            [2050, 12],
            [2100, 14],
            [2140, 16],
            [2150, 18],
            [2200, 20],
          ] as const),
        ],
      ],
    ];
    for (const [length, best, counts] of lists) {
      const sizes = counts.flatMap(([size, n]) => Array.from({ length: n }, (): Size => [1, size]));
      const asked = { ...problem(1, length, sizes), stages: 3 };
      const { bins, bound } = fewestBins(asked, "quick");
      check(asked, bins);
      expect([bins.length, bound]).toEqual([best, best]);
    }
  });
});
