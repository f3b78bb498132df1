import { expect, test } from "vitest";
import type { Point2, Vec } from "../../../src/geometry/types.ts";
import { type Driven, onlyRings } from "../../../src/render/drawing/step/screws.ts";

const screw = (i: number, apart: number): Driven => ({
  ...{
    id: `s${i}`,
    mouth: [i * apart, 0, 0],
    direction: [0, 0, -1],
    head: [i * apart, 0, 2],
    point: [i * apart, 0, 1],
  },
  ...{ rod: 1, headWidth: 2, isDowel: false },
});
const flat = ([x, y]: Vec): Point2 => [x, y];
const row = (count: number, apart: number) => Array.from({ length: count }, (_, i) => screw(i, apart));

test("of many screws in a row that stand close every second one is a ring", () => {
  expect([...onlyRings(row(10, 9), flat)]).toEqual(["s1", "s3", "s5", "s7", "s9"]);
});

test("many that stand apart are drawn whole, and so are a few that stand close", () => {
  expect(onlyRings(row(10, 40), flat).size).toBe(0);
  expect(onlyRings(row(8, 9), flat).size).toBe(0);
});

test("many that stand side by side, each clear of the next, are drawn whole", () => {
  // Driven along the row's own normal, 12 apart: seen from the side their shanks lie 12 from one another.
  const upright = row(10, 12).map((each) => ({ ...each, head: [each.mouth[0], 20, 0] as Vec }));
  expect(onlyRings(upright, flat).size).toBe(0);
  // In line with their own shanks the same ten stand before one another.
  const inLine = row(10, 12).map((each) => ({ ...each, head: [each.mouth[0] - 20, 0, 0] as Vec }));
  expect(onlyRings(inLine, flat).size).toBe(5);
});
