/** What is glued up, and what solid wood is left over its size. */
import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/index.ts";
import { bench, blanksOf, built, lineOf, plain, shelfCase, stepWith } from "./plans.ts";

describe("a seat of three boards", () => {
  const build = built(bench());

  // (14 + 1/2) / 3 = 4 5/6, up to 4 7/8 when jointed, + 1/4 = 5 1/8 rough; 52 + 1 = 53 long; 6/4 boards are 1 1/2 thick.
  test("each board by hand", () => {
    expect(blanksOf(build, "seat")).toEqual(Array(3).fill("1 1/2 × 5 1/8 × 53 glue-up"));
    expect(lineOf(build, "seat").notes.map(plain)).toContain(
      "glued up from 3 boards, each 5 1/8 in × 53 in rough, 4 7/8 in wide when jointed",
    );
  });

  // 3 × 1 1/2 × 5 1/8 × 53 / 144 = 8.49 board feet.
  test("the wood in them, in board feet", () => {
    const cubic = build.blanks
      .filter(({ part }) => part === "seat")
      .map(({ thickness, width, length }) => toInches(thickness) * toInches(width) * toInches(length));
    expect(cubic.reduce((a, b) => a + b) / 144).toBeCloseTo(8.49, 2);
  });

  // 16 1/2 + 1; 2 1/4 + 1/4 both ways; the aprons 42 + 1 and 10 + 1 long, 3 1/2 + 1/4 wide, as thick as 5/4 is sold.
  test("legs and aprons get rough sizes", () => {
    expect(blanksOf(build, "front-left-leg")).toEqual(["2 1/2 × 2 1/2 × 17 1/2 rough"]);
    expect(blanksOf(build, "back-apron")).toEqual(["1 1/4 × 3 3/4 × 43 rough"]);
    // Two of 11 in line, as one piece that is planed whole.
    expect(blanksOf(build, "left-apron")).toEqual(["1 1/4 × 3 3/4 × 22 1/8 rough"]);
  });

  test("sawn, glued up, flattened the next day, then cut to size; all before it is joined", () => {
    const order = [
      "Saw the rough pieces from white oak, 6/4",
      "Plane the boards for the seat",
      "Glue up the seat",
      "Flatten the seat",
      "Screw on the seat",
    ];
    const numbers = order.map((title) => stepWith(build, title).number);
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
    const glued = stepWith(build, "Glue up the seat");
    // Half of what there is to plane, 1 1/2 − 1 1/4, comes off before; a night between.
    const planed = stepWith(build, "Plane the boards for the seat");
    expect(plain(planed.text.join(" "))).toContain("all at one setting, to 1 3/8 in");
    expect(planed.waits.map(({ minutes }) => minutes)).toEqual([12 * 60]);
    expect(glued.text.join(" ")).not.toMatch(/lies flat/u);
    expect(glued.waits.map(({ minutes }) => minutes)).toEqual([45, 24 * 60]);
    // Clamps over 53 in, one every 8 in: ceil((53 − 4) / 8) + 1 = 8.
    expect(plain(glued.text.join(" "))).toContain("Set four clamps open on the bench");
    expect(plain(stepWith(build, "Flatten the seat").text.join(" "))).toContain("14 in wide, 52 in long");
    expect(stepWith(build, "Flatten the seat").after).toContain(glued.number);
  });

  test("glue is on the shopping list", () => {
    expect(build.purchases.map(({ item }) => item)).toContain("wood glue");
  });
});

test("what is glued up or bought rough is left over by the usual allowances, what is bought dressed is not", () => {
  const build = built(bench(""));
  expect(blanksOf(build, "seat")).toEqual(Array(3).fill("1 1/2 × 5 1/8 × 53 glue-up"));
  expect(blanksOf(build, "front-left-leg")).toEqual(["2 1/2 × 2 1/2 × 17 1/2 rough"]);
  const dressed = built(bench("").replace("sold as: 5/4, planed to: 1,", "measures: { thick: 1 },"));
  expect(blanksOf(dressed, "left-apron")).toEqual(["1 × 3 1/2 × 10 as finished"]);
});

test("boards sold dressed lose their round edges too, and are flattened when they are laid out", () => {
  // 10 + 1/2 shared by 2 is 5 1/4 when jointed, + 1/2 for two round edges; from boards 1 1/2 thick a top 1 3/8 thick.
  const table = built(`plan: 1
title: Step
units: inch
stock: { lumber: { sold as: 2x8, wood: spruce } }
piece:
  tread: { made of: lumber, boards: 2, as: lying flat, grain: across, thickness: 1 3/8, left: 0, right: 24, front: 0, back: 10, bottom: 8 }
  left-leg: { made of: lumber, as: upright, facing: left, left: 1, front: 1, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: 23 }
joints: [{ join: tread, to: [left-leg, right-leg], with: screws }]
`);
  expect(blanksOf(table, "tread")).toEqual(Array(2).fill("1 1/2 × 5 3/4 × 25 glue-up"));
  // The legs are bought in their section: they are only cut to length.
  expect(blanksOf(table, "left-leg")).toEqual(["1 1/2 × 7 1/4 × 8 as finished"]);
  expect(table.told).toEqual([]);
  expect(stepWith(table, "Glue up the tread").text.join(" ")).toContain("Plane one face of each until it lies flat");
});

test("a slab in millimetres: (360 + 12) / 3 = 124, + 6; 1200 + 25", () => {
  const slab = built(`plan: 1
title: Platte
units: mm
stock:
  oak: { wood: white oak, sold as: 8/4, planed to: 40, widths: 100 to 200, sold in: [2400] }
piece:
  slab: { made of: oak, boards: 3, as: lying flat, grain: across, left: 0, right: 1200, front: 0, back: 360, bottom: 400 }
  left-leg: { made of: oak, as: upright, facing: left, width: 100, left: 100, front: 100, bottom: 0, under: slab }
  right-leg: { like: left-leg, right: 1100 }
joints: [{ join: slab, to: [left-leg, right-leg], with: screws }]
`);
  expect(blanksOf(slab, "slab")).toEqual(Array(3).fill("50.8 × 130 × 1225 glue-up"));
});

describe("layers of a sheet", () => {
  const build = built(shelfCase(", layers: 2"));
  // Thickness 2 × 23/32; 10 × 28 9/16, each layer 1/2 larger both ways.
  test("as thick as two sheets, each layer a blank of its own", () => {
    expect(blanksOf(build, "shelf")).toEqual(Array(2).fill("23/32 × 10 1/2 × 29 1/16 glue-up"));
    const { thickness, width, length } = lineOf(build, "shelf");
    expect([thickness, width, length].map(toInches)).toEqual([1.4375, 10, 28.5625]);
  });
  test("glued over their faces, then trimmed", () => {
    expect(stepWith(build, "Glue up the shelf").text.join(" ")).toContain("over the whole face between the 2 layers");
    expect(stepWith(build, "Trim the shelf").number).toBeGreaterThan(stepWith(build, "Glue up the shelf").number);
  });
});
