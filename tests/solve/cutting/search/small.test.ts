import fc from "fast-check";
import { expect, test } from "vitest";
import { columnBound } from "../../../../src/solve/build/cutting/bounds/columns.ts";
import { feasibleBound } from "../../../../src/solve/build/cutting/bounds/dual-feasible.ts";
import type { Problem } from "../../../../src/solve/build/cutting/search/problem.ts";
import { solve } from "../../../../src/solve/build/cutting/search/solve.ts";
import { cheapestBoards, fewestSheets, leastOfShares, type Small } from "./by-trying.ts";
import { wrongIn } from "./tree.ts";

const ENDLESS = Number.POSITIVE_INFINITY;
const ANY = { known: 0, wanted: ENDLESS };

const problemOf = ({ width, length, parts, turn }: Small, stages: number): Problem => ({
  bins: [{ width, length, cost: 1, most: ENDLESS }],
  parts: parts.map(([w, l]) => {
    const ways = [{ width: w, length: l }, ...(turn ? [{ width: l, length: w }] : [])];
    return { ways: ways.filter((way) => way.width <= width && way.length <= length) };
  }),
  stages,
});

const small: fc.Arbitrary<Small> = fc
  .record({ width: fc.integer({ min: 4, max: 8 }), length: fc.integer({ min: 4, max: 8 }), turn: fc.boolean() })
  .chain(({ width, length, turn }) =>
    fc
      .array(fc.tuple(fc.integer({ min: 1, max: width }), fc.integer({ min: 1, max: length })), {
        minLength: 1,
        maxLength: 7,
      })
      .map((parts) => ({ width, length, parts, turn })),
  );

test("sheets: as few as by trying everything, and no bound above that", () => {
  fc.assert(
    fc.property(small, (each) => {
      const exact = fewestSheets(each);
      const problem = problemOf(each, 20);
      const found = solve(problem, "quick");
      expect(wrongIn(problem, found?.packed ?? [])).toEqual([]);
      expect(found?.count).toBe(exact);
      expect(feasibleBound(problem, [1])).toBeLessThanOrEqual(exact);
      expect(columnBound(problem, [1], ANY, { left: 1e6 }).bound).toBeLessThanOrEqual(exact);
      expect(found?.countBound).toBeLessThanOrEqual(exact);
    }),
    { numRuns: 150, seed: 1 },
  );
}, 60_000);

test.each([2, 3])(
  "no more than %i stages, and every part once",
  (stages) => {
    const part = fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 60 }));
    fc.assert(
      fc.property(fc.array(part, { minLength: 5, maxLength: 30 }), fc.boolean(), (parts, turn) => {
        const problem = problemOf({ width: 100, length: 100, parts, turn }, stages);
        expect(wrongIn(problem, solve(problem, "quick")?.packed ?? [])).toEqual([]);
      }),
      { numRuns: 15, seed: 1 },
    );
  },
  60_000,
);

test("boards: as cheap as by trying everything, whatever the prices; the bound is no dearer", () => {
  const lengths = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 1, maxLength: 8 });
  const sold = fc.constantFrom(
    [{ length: 96, cost: 96 }],
    [96, 120, 144, 192].map((length) => ({ length, cost: length })),
    [
      { length: 90, cost: 275 },
      { length: 100, cost: 290 },
      { length: 170, cost: 640 },
    ],
  );
  fc.assert(
    fc.property(lengths, sold, (list, boards) => {
      const problem: Problem = {
        bins: boards.map(({ length, cost }) => ({ width: 1, length, cost, most: ENDLESS })),
        parts: list.map((length) => ({ ways: [{ width: 1, length }] })),
        stages: 3,
      };
      const found = solve(problem, "normal");
      expect(wrongIn(problem, found?.packed ?? [])).toEqual([]);
      expect(found?.cost).toBe(cheapestBoards(list, boards));
      expect(found?.costBound).toBeLessThanOrEqual(found?.cost ?? 0);
    }),
    { numRuns: 60, seed: 1 },
  );
}, 120_000);

test("what lies there is used before anything is bought, and no more of it than there is", () => {
  const lengths = fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(lengths, fc.integer({ min: 0, max: 3 }), (list, there) => {
      const problem: Problem = {
        bins: [
          { width: 1, length: 60, cost: 0, most: there, onHand: true },
          { width: 1, length: 100, cost: 1, most: ENDLESS },
        ],
        parts: list.map((length) => ({ ways: [{ width: 1, length }] })),
        stages: 3,
      };
      const found = solve(problem, "normal");
      expect(wrongIn(problem, found?.packed ?? [])).toEqual([]);
      expect(found?.count).toBe(leastBought(list, there));
      expect(found?.countBound).toBeLessThanOrEqual(found?.count ?? 0);
      expect(found?.costBound).toBeLessThanOrEqual(found?.cost ?? 0);
    }),
    { numRuns: 60, seed: 1 },
  );
}, 120_000);

/** Boards of 100 to buy besides some of 60, by trying every way of sharing the lengths out. */
const leastBought = (lengths: readonly number[], there: number): number =>
  leastOfShares(lengths, (sums) => {
    const short = sums.filter((sum) => sum <= 60).length;
    return sums.some((sum) => sum > 100) ? ENDLESS : sums.length - Math.min(short, there);
  });
