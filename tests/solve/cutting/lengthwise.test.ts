import fc from "fast-check";
import { expect, test } from "vitest";
import type { Bin } from "../../../src/solve/build/cutting/item.ts";
import { makeItem } from "../../../src/solve/build/cutting/item.ts";
import { findBoards } from "../../../src/solve/build/cutting/small/find-boards.ts";
import { cheapestLengths, isLengthwise } from "../../../src/solve/build/cutting/small/lengthwise.ts";
import { contents } from "../../../src/solve/build/cutting/small/place.ts";
import { rational, ZERO } from "../../../src/units/index.ts";
import { cheapestBoards } from "./search/by-trying.ts";
import { blank, board } from "./stock.ts";

const stock = board(rational(10), [rational(100)]);
const ROOM = { width: rational(10), length: rational(5600) };
const items = (lengths: readonly number[]) =>
  lengths.map((length, i) => makeItem(blank(stock, `b${i}`, rational(10), rational(length)), ZERO, ROOM));
const bin = (length: number): Bin => ({ soldLength: rational(length), width: 10, length, cost: length });
const total = (boards: readonly { bin: Bin }[]): number => boards.reduce((sum, { bin: b }) => sum + b.cost, 0);

/** The least length to buy, by trying every way of sharing the parts out. */
const leastByHand = (lengths: readonly number[], sold: readonly number[]): number =>
  cheapestBoards(
    lengths,
    sold.map((length) => ({ length, cost: length })),
  );

test("small lists are solved as well as by trying everything", () => {
  const lists = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 1, maxLength: 8 });
  const sold = fc.constantFrom([96], [96, 120], [96, 120, 144, 192], [90, 100, 170]);
  fc.assert(
    fc.property(lists, sold, (lengths, bins) => {
      const found = cheapestLengths(items(lengths), bins.map(bin));
      expect(found && total(found)).toBe(leastByHand(lengths, bins));
      const placed = (found ?? []).flatMap(({ whole }) => contents(whole).map(({ item }) => item.blank.id));
      expect(placed.toSorted()).toEqual(lengths.map((_, i) => `b${i}`).toSorted());
    }),
    { numRuns: 150 },
  );
});

test("three parts fill each board to the end", () => {
  // Made as E. Falkenauer, "A hybrid grouping genetic algorithm for bin packing" (1996): every board is 1000 long.
  const triplets = [
    [499, 260, 241],
    [411, 330, 259],
    [381, 362, 257],
    [472, 275, 253],
    [437, 298, 265],
    [402, 349, 249],
  ];
  const found = cheapestLengths(items(triplets.flat()), [bin(1000)]);
  expect(found).toHaveLength(triplets.length);
});

test("of equally long purchases the one with fewer boards wins", () => {
  const found = cheapestLengths(items([40, 40, 40, 40]), [bin(80), bin(160)]);
  expect(found?.map((each) => each.bin.length)).toEqual([160]);
});

test("the greedy search comes close where trying everything takes too long", () => {
  // A cutting-stock example that is printed in many places: stock 5600, optimum 73 (from memory; the lengths alone need 72.7).
  const counts = [22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20];
  const lengths = [1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200];
  const list = lengths.flatMap((length, i) => Array.from({ length: counts[i] ?? 0 }, () => length));
  const boards = findBoards(items(list), [bin(5600)], 73 * 5600);
  expect(boards.length).toBeGreaterThanOrEqual(73);
  expect(boards.length).toBeLessThanOrEqual(76);
});

test("side by side is not lengthwise", () => {
  const narrow = makeItem(blank(stock, "a", rational(4), rational(50)), ZERO, ROOM);
  expect(isLengthwise(items([50, 40]), [bin(100)])).toBe(true);
  expect(isLengthwise([...items([50]), narrow], [bin(100)])).toBe(true);
  expect(isLengthwise([narrow, narrow], [bin(100)])).toBe(false);
});
