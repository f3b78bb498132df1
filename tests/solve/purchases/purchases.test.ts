import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { purchases as shopping } from "../../../src/solve/build/purchases/index.ts";
import type { Layout } from "../../../src/solve/build.ts";
import type { Fastener, Joint, Stock, Units, Workshop } from "../../../src/solve/design.ts";
import { inches, millimetres } from "../../../src/units/index.ts";
import { blank, board, sheet } from "../cutting/stock.ts";

const KERF = inches(1, 8);
const FEET = [8, 10, 12, 16].map((feet) => inches(12 * feet));
const fastener = (item: string): Fastener => ({
  id: item,
  joint: "j1",
  kind: "wood screw",
  item,
  length: inches(1),
  rod: inches(1, 8),
  head: { at: [inches(0), inches(0), inches(0)], diameter: inches(1, 4), height: inches(1, 8), seat: "flush" },
  direction: [0, 0, 1],
  through: [],
  into: "a",
  travelsWith: null,
});
const joint = (glue: boolean): Joint => ({
  id: "j1",
  at: { start: 0, end: 1, line: 1, column: 1 },
  parts: ["a", "b"],
  kind: "fixed",
  method: "dowels",
  glue,
  gap: inches(0),
  contact: [],
  insertion: null,
  arrangements: [],
});

/** The shopping list of wood, fasteners and joints alone. */
const purchases = (
  stock: readonly Stock[],
  layouts: readonly Layout[],
  fasteners: readonly Fastener[] = [],
  joints: readonly Joint[] = [],
  { units = "inch", workshop }: { units?: Units; workshop?: Workshop } = {},
) =>
  shopping({
    design: { stock, parts: [], joints, units, ...(workshop && { workshop }) },
    ...{ layouts, fasteners, blanks: [], cutList: [], hardware: [], holes: [], print: () => "" },
  });
const many = (item: string, count: number): Fastener[] => Array.from({ length: count }, () => fastener(item));

test("sheets and boards are counted as they are laid out, sheets first", () => {
  const lumber = board(inches(7, 2), FEET);
  const ply = sheet(inches(48), inches(96), { price: 62.5 });
  const blanks = [
    ...["a", "b", "c"].map((id) => blank(lumber, id, inches(7, 2), inches(94))),
    ...["d", "e"].map((id) => blank(ply, id, inches(47), inches(80))),
  ];
  const list = purchases([lumber, ply], layOut([lumber, ply], blanks, KERF).layouts, [], []);
  expect(list.map(({ section, item, quantity, unit, price }) => [section, item, quantity, unit, price])).toEqual([
    ["sheets", "3/4 birch plywood, 48 × 96 in", 2, "sheet", 125],
    ["lumber", "2×4 spruce, 8 ft", 1, "board", null],
    ["lumber", "2×4 spruce, 16 ft", 1, "board", null],
  ]);
  // 2 × 47 × 80 of 2 × 48 × 96 in
  expect(list[0]?.waste).toBe(0.184);
});

test("boards of which only the thickness is known are named by width and length", () => {
  const pine = board(inches(6), [inches(96)], { label: "pine", width: null, assumed: true, price: 9 });
  const list = purchases([pine], layOut([pine], [blank(pine, "a", inches(3), inches(40))], KERF).layouts, [], []);
  expect(list).toMatchObject([{ item: "pine, 6 in × 8 ft", quantity: 1, price: 9 }]);
});

test("rough boards are bought by board feet: by the layout, or by the parts and 30 % more", () => {
  const oak = (soldWidth: number) =>
    board(inches(soldWidth), [inches(96)], {
      name: "oak",
      label: "white oak, 4/4 planed to 3/4",
      width: null,
      assumed: true,
      roughThickness: inches(1),
      price: 8,
    });
  const one = [blank(oak(6), "a", inches(4), inches(40))];
  // One board of 1 × 6 × 96 in is 4 board feet; the part is 1.11.
  expect(purchases([oak(6)], layOut([oak(6)], one, KERF).layouts, [], [])).toMatchObject([
    {
      section: "lumber",
      item: "white oak, 4/4 planed to 3/4",
      quantity: 4,
      unit: "board feet",
      price: 32,
      waste: 0.722,
    },
  ]);
  const full = [blank(oak(6), "a", inches(6), inches(95))];
  // The part is 95 × 6 / 144 = 3.958 board feet; with 30 % more 5.146, up to a tenth.
  expect(purchases([oak(6)], layOut([oak(6)], full, KERF).layouts, [], [])).toMatchObject([{ quantity: 5.2 }]);
});

test("in a metric plan rough boards are bought by the cubic metre", () => {
  const beech = board(millimetres(150), [millimetres(2400)], {
    label: "beech, 26 rough planed to 20",
    width: null,
    assumed: true,
    roughThickness: millimetres(26),
  });
  const layouts = layOut([beech], [blank(beech, "a", millimetres(100), millimetres(1000))], millimetres(3)).layouts;
  // 0.026 × 0.15 × 2.4 m = 0.00936
  expect(purchases([beech], layouts, [], [], { units: "mm" })).toMatchObject([{ quantity: 0.01, unit: "m³" }]);
});

test("fasteners are counted by what is printed, and screws come in boxes: the smallest that holds them and a tenth more", () => {
  const screw = "wood screw #8 × 2 in, countersunk";
  // 46 and 5 spare: more than 50, so a box of 100. Boxes of 25, 50, 100 and 200: common practice, no source.
  expect(purchases([], [], [...many("bolt 1/4 in × 2 in", 3), ...many(screw, 46)])).toMatchObject([
    { section: "fasteners", item: "bolt 1/4 in × 2 in", quantity: 3, unit: "piece" },
    { item: screw, quantity: 1, unit: "box", content: { count: 100, of: "piece" }, note: "46 are used" },
  ]);
  // 22 and 3 spare fill a box of 25; 400 and 40 take three of 200.
  expect(purchases([], [], many(screw, 22))).toMatchObject([{ quantity: 1, content: { count: 25 } }]);
  expect(purchases([], [], many(screw, 400))).toMatchObject([{ quantity: 3, content: { count: 200 } }]);
});

const shed = (supplies: [string, number][], prices: [string, number][] = []): Workshop => ({
  file: "workshop.yaml",
  supplies: new Map(supplies),
  prices: new Map(prices),
});

test("what lies in the workshop is used up first, and is no reason to buy a spare", () => {
  const screw = "wood screw #8 × 2 in, countersunk";
  const list = (count: number) =>
    purchases([], [], many(screw, 46), [], { workshop: shed([["woodscrew#8x2in,countersunk", count]]) });
  // As the name is squeezed: no case, no blanks.
  expect(list(46)).toMatchObject([{ quantity: 0, onHand: 46 }]);
  expect(list(200)).toMatchObject([{ quantity: 0, onHand: 46 }]);
  // 51 − 40 = 11 are wanted: a box of 25.
  expect(list(40)).toMatchObject([{ quantity: 1, content: { count: 25 }, onHand: 40 }]);
});

test("prices are those of the box, in cents", () => {
  const prices = shed([], [["woodscrew#8x2in", 7.35]]);
  expect(purchases([], [], many("wood screw #8 × 2 in", 400), [], { workshop: prices })).toMatchObject([
    { quantity: 3, price: 22.05 },
  ]);
});

test("glue is there when a joint is glued, by the areas that touch", () => {
  expect(purchases([], [], [], [joint(false), joint(true)])).toMatchObject([
    { section: "supplies", item: "wood glue", quantity: 1, unit: "4 oz bottle" },
  ]);
  expect(purchases([], [], [], [joint(false)])).toEqual([]);
  // 3 m² at 6 m² a litre and 30 % squeezed out: 0.65 l, which is 22 US fluid ounces of 29.57 ml, or a bottle of a litre.
  const square = (3 * 1e6 * 16_000 ** 2) as number;
  const large: Joint = { ...joint(true), contact: [{ area: square } as Joint["contact"][number]] };
  expect(purchases([], [], [], [large])).toMatchObject([{ unit: "32 oz bottle", note: "about 22 oz are used" }]);
  expect(purchases([], [], [], [large], { units: "mm" })).toMatchObject([{ unit: "1000 ml bottle", quantity: 1 }]);
});

test("of each size its own price, and the waste that the maker wants in whole boards", () => {
  const sold = [
    { width: inches(7, 2), length: inches(96), price: 4.4 },
    { width: inches(7, 2), length: inches(120), price: 6 },
  ];
  const pine = board(inches(7, 2), [inches(96), inches(120)], { sold, waste: 0.25 });
  const blanks = ["a", "b", "c", "d", "e"].map((id) => blank(pine, id, inches(7, 2), inches(90)));
  const { layouts } = layOut([pine], blanks, KERF);
  // 5 × 90 in of 5 × 96 in; a quarter more is 562.5 in, 5.9 boards.
  expect(purchases([pine], layouts)).toMatchObject([{ item: "2×4 spruce, 8 ft", quantity: 6, price: 26.4 }]);
});
