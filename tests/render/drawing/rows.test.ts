import { expect, test } from "vitest";
import { laddersOf, setsOf } from "../../../src/render/drawing/part/ladders.ts";
import { type Found, type InPart, rowsOf, runsOf, together } from "../../../src/render/drawing/part/rows.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { at } from "./fixture/making.ts";

const INCH = 406_400;
const points = (along: readonly number[], across: number): InPart[] =>
  along.map((u) => [u * INCH, across * INCH, 0] as const);
const itself = (point: InPart): InPart => point;
const inInches = (found: readonly Found<unknown>[]) =>
  found.map(({ row, points: all }) => [row.from / INCH, row.to / INCH, row.spaces, all.length]);

test("four holes at equal distances are a row, three are not", () => {
  expect(inInches(rowsOf(points([2, 4, 6, 8], 1), itself, 0))).toEqual([[2, 8, 3, 4]]);
  expect(rowsOf(points([2, 4, 6], 1), itself, 0)).toEqual([]);
  // Holes in an end stand at one place of the length.
  expect(rowsOf(points([2, 2, 2, 2], 1), itself, 0)).toEqual([]);
});

test("three holes are a row where three beside them stand nearly at the same places", () => {
  const beside = [...points([1, 14.5, 28], 8.375), ...points([1.375, 14.875, 28.375], 0.375)];
  expect(inInches(rowsOf(beside, itself, 0))).toEqual([
    [1.375, 28.375, 2, 3],
    [1, 28, 2, 3],
  ]);
  expect(rowsOf([...points([1, 14.5, 28], 8), ...points([1, 14.5, 28], 2)], itself, 0)).toEqual([]);
  expect(rowsOf([...points([1, 14.5, 28], 8), ...points([4, 17.5, 31], 2)], itself, 0)).toEqual([]);
});

test("a hole that stands apart ends the row", () => {
  expect(inInches(rowsOf(points([1, 4, 5.25, 6.5, 7.75, 9, 12], 1), itself, 0))).toEqual([[4, 9, 4, 5]]);
});

test("two columns of shelf pins side by side are told once, and their distance is not a row", () => {
  const pins = [...points([3, 4, 5, 6, 7, 8], 2), ...points([3, 4, 5, 6, 7, 8], 9)];
  const found = rowsOf(pins, itself, 0);
  expect(inInches(found)).toEqual([
    [3, 8, 5, 6],
    [3, 8, 5, 6],
  ]);
  expect(inInches(together(found))).toEqual([[3, 8, 5, 12]]);
  expect(rowsOf(pins, itself, 1)).toEqual([]);
});

/** Screws round a back: rows along it at both edges alike, across it at both ends 3/8 apart. */
const hole = (x: number, y: number): Hole => ({
  ...{ part: "back", kind: "clearance", at: at(x, y, 0), direction: [0, 0, -1], stages: [], through: true, for: null },
  keep: { edge: { n: 0n, d: 1n }, end: { n: 0n, d: 1n }, under: { n: 0n, d: 1n } },
  atBench: true,
});
const spotOf = ({ at: [x, y] }: Hole): InPart => [Number(x.n) / Number(x.d), Number(y.n) / Number(y.d), 0];
const wayOf = ({ direction }: Hole): InPart => direction;

test("rows that overlap and differ have each its letter and its line of numbers", () => {
  const along = [3, 7, 11, 15, 19].flatMap((x) => [hole(x, 1), hole(x, 31)]);
  const across = [5, 11, 17, 23].flatMap((y) => [hole(0.5, y), hole(35.5, y + 0.375)]);
  const sets = setsOf([...along, ...across], spotOf, wayOf);
  expect(sets.map((set) => set.length)).toEqual([10, 4, 4]);
  const lettered = sets.map((holes, i) => ({ letter: "abc"[i] as string, holes }));
  const ladders = laddersOf([lettered], spotOf, wayOf);
  expect(
    ladders.map(({ axis, row, letters }) => [axis, letters.join(), row.from / INCH, row.to / INCH, row.spaces]),
  ).toEqual([
    [0, "a", 3, 19, 4],
    [1, "b", 5, 23, 3],
    [1, "c", 5.375, 23.375, 3],
  ]);
});

test("places at equal distances are told by their ends and the count of the spaces", () => {
  // Sockets and tails of 3/4 in, 1/2 in from both edges of a board 5 1/2 in wide.
  const places = [0, 0.5, 1.25, 2, 2.75, 3.5, 4.25, 5, 5.5];
  const found = runsOf(places.map((u) => u * INCH));
  expect(found.map(({ row, inside }) => [row.from / INCH, row.to / INCH, row.spaces, inside.length])).toEqual([
    [0.5, 5, 6, 5],
  ]);
});
