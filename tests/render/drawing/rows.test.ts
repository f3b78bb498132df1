import { expect, test } from "vitest";
import { type InPart, rowsApart, rowsOf, rowsOnce, runsOf } from "../../../src/render/drawing/part/rows.ts";

const INCH = 406_400;
const points = (along: readonly number[], across: number): InPart[] =>
  along.map((u) => [u * INCH, across * INCH, 0] as const);
const inInches = (found: ReturnType<typeof rowsOf>) =>
  found.map(({ row, inside }) => [row.from / INCH, row.to / INCH, row.spaces, inside.length]);

test("five holes at equal distances are a row, four are not", () => {
  expect(inInches(rowsOf(points([2, 4, 6, 8, 10], 1), 0))).toEqual([[2, 10, 4, 3]]);
  expect(rowsOf(points([2, 4, 6, 8], 1), 0)).toEqual([]);
});

test("a hole that stands apart ends the row", () => {
  expect(inInches(rowsOf(points([1, 4, 5.25, 6.5, 7.75, 9, 12], 1), 0))).toEqual([[4, 9, 4, 3]]);
});

test("two columns of shelf pins side by side are told once, and their distance is not a row", () => {
  const pins = [...points([3, 4, 5, 6, 7, 8], 2), ...points([3, 4, 5, 6, 7, 8], 9)];
  const found = rowsOf(pins, 0);
  expect(inInches(found)).toEqual([
    [3, 8, 5, 4],
    [3, 8, 5, 4],
  ]);
  expect(rowsOnce(found.map(({ row }) => row))).toHaveLength(1);
  expect(rowsOf(pins, 1)).toEqual([]);
});

test("rows that overlap and differ are not counted: their numbers could not be told apart", () => {
  const [one] = rowsOf(points([2, 4, 6, 8, 10], 1), 0);
  const [other] = rowsOf(points([3, 5, 7, 9, 11], 8), 0);
  const [far] = rowsOf(points([20, 21, 22, 23, 24], 8), 0);
  if (!one || !other || !far) throw new Error("three rows");
  expect(rowsApart([one, other, far])).toEqual([far]);
  expect(rowsApart([one, one, far])).toEqual([one, one, far]);
});

test("places at equal distances are told by their ends and the count of the spaces; what is counted already ends them", () => {
  // Sockets and tails of 3/4 in, 1/2 in from both edges of a board 5 1/2 in wide.
  const places = [0, 0.5, 1.25, 2, 2.75, 3.5, 4.25, 5, 5.5];
  const found = runsOf(
    places.map((u) => u * INCH),
    () => false,
  );
  expect(found.map(({ row, inside }) => [row.from / INCH, row.to / INCH, row.spaces, inside.length])).toEqual([
    [0.5, 5, 6, 5],
  ]);
  expect(
    runsOf(
      places.map((u) => u * INCH),
      (from, to) => from < 3 * INCH && to > 2.5 * INCH,
    ),
  ).toEqual([]);
});
