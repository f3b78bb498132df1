import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { purchases } from "../../../src/solve/build/purchases/index.ts";
import type { Fastener, Joint } from "../../../src/solve/design.ts";
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
  expect(purchases([beech], layouts, [], [], "mm")).toMatchObject([{ quantity: 0.01, unit: "m³" }]);
});

test("fasteners are counted by what is printed, glue is there when a joint is glued", () => {
  const screws = ["#8 × 2 in wood screw", "#10 × 3 in wood screw", "#8 × 2 in wood screw"].map(fastener);
  expect(purchases([], [], screws, [joint(false), joint(true)])).toMatchObject([
    { section: "fasteners", item: "#10 × 3 in wood screw", quantity: 1, unit: "piece" },
    { section: "fasteners", item: "#8 × 2 in wood screw", quantity: 2 },
    { section: "supplies", item: "wood glue", quantity: 1, unit: "bottle" },
  ]);
  expect(purchases([], [], [], [joint(false)])).toEqual([]);
});
