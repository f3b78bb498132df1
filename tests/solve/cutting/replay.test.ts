import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import type { Layout } from "../../../src/solve/build.ts";
import { add, inches, subtract } from "../../../src/units/index.ts";
import { faultsOf } from "./replay.ts";
import { blank, sheet } from "./stock.ts";

const stock = sheet(inches(48), inches(96));
const blanks = [..."abcd"].map((id) => blank(stock, id, inches(20), inches(30)));
const all = new Map(blanks.map((each) => [each.id, each]));
const good = layOut([stock], blanks, inches(1, 8)).layouts[0] as Layout;
const first = good.placements[0] as Layout["placements"][number];

test("the checker passes a layout that can be sawn", () => {
  expect(faultsOf(good, all)).toEqual([]);
});

test.each<[string, Layout]>([
  ["a wider kerf", { ...good, kerf: inches(1, 4) }],
  ["a cut left out", { ...good, cuts: good.cuts.slice(1) }],
  ["the cuts in another order", { ...good, cuts: good.cuts.toReversed() }],
  ["a part moved", { ...good, placements: [{ ...first, x: add(first.x, inches(1)) }, ...good.placements.slice(1)] }],
  ["a part turned", { ...good, placements: [{ ...first, turned: true }, ...good.placements.slice(1)] }],
  ["another squaring cut", { ...good, squaring: subtract(good.squaring, inches(1, 16)) }],
  ["a part twice", { ...good, placements: [first, ...good.placements] }],
  [
    "an offcut that is not there",
    { ...good, offcuts: [{ x: inches(1), y: inches(1), width: inches(9), length: inches(9) }] },
  ],
])("the checker sees %s", (_, layout) => {
  expect(faultsOf(layout, all)).not.toEqual([]);
});
