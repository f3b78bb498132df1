/** Rough boards of one wood and thickness that are planed to two thicknesses are bought, laid out and sawn together. */
import { describe, expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { sound } from "../../parse/assemblies/opened.ts";

/** A box of which the sides are planed to 3/4 and the strips to 1/2; what is said of the stock of the strips. */
const rack = (strips: string, more = ""): string => `plan: 1
title: Rack
units: inch
outside: { width: 24, depth: 6, height: 24 }
stock:
  sides: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 5 to 8${more} }
  strips: { ${strips} }
piece:
  left: { made of: sides, as: upright, facing: left, left: 0, front: 0, back: 6, bottom: 0, top: 24 }
  right: { made of: sides, as: upright, facing: right, right: 24, front: 0, back: 6, bottom: 0, top: 24 }
  low: { made of: strips, as: on edge, facing: front, between: [left, right], front: 0, bottom: 2, up: 3 }
  high: { made of: strips, as: on edge, facing: front, between: [left, right], front: 0, bottom: 18, up: 3 }
joints:
  - { join: [low, high], to: [left, right], with: dowels }
`;
const SAME = "wood: white oak, sold as: 4/4, planed to: 1/2, widths: 5 to 8";
const lumber = (text: string) => sound(text).purchases.filter(({ section }) => section === "lumber");
const plain = (text: string): string => text.replaceAll("\u202f", " ");

describe("two thicknesses from the same boards", () => {
  const build = sound(rack(SAME));

  // Rough: 2 × 6 1/4 × 25 and 2 × 3 1/4 × 24 1/2, side by side in one board 8 wide and 96 long: 25 + 25 + 24 1/2 and two kerfs, the
  // end trimmed, is 75 1/8; two strips of 3 1/4 and a kerf are 6 5/8 wide. 8 × 96 / 144 = 5 1/3 board feet, up to the next tenth.
  test("are laid out on one board, with one proof for both", () => {
    expect(build.layouts).toHaveLength(1);
    expect(build.layouts[0]?.placements.map(({ mark }) => mark)).toHaveLength(4);
    expect(build.layoutProof).toMatchObject([{ stocks: ["sides", "strips"], count: 1, countBound: 1 }]);
  });

  test("are one line to buy, by the name of the wood before it is planed", () => {
    expect(lumber(rack(SAME))).toMatchObject([{ item: "white oak, 4/4", quantity: 5.4, unit: "board feet" }]);
    expect(plain(lumber(rack(SAME))[0]?.note ?? "")).toMatch(/planed to 3\/4 in, some of it to 1\/2 in/);
  });

  test("are sawn in one step, and planed each to their own", () => {
    const sawn = build.steps.filter(({ title }) => title.startsWith("Saw the rough pieces"));
    expect(sawn.map(({ title }) => title)).toEqual(["Saw the rough pieces from white oak, 4/4"]);
    expect(plain(sawn[0]?.text.join(" ") ?? "")).toMatch(
      /planed to 3⁄4 in \([A-D and]+\) and 1⁄2 in \([A-D and]+\) later/,
    );
    expect(build.steps.filter(({ title }) => title.startsWith("Bring the parts from"))).toHaveLength(2);
  });
});

describe("boards are not shared", () => {
  test.each([
    ["of another wood", SAME.replace("white", "red"), ""],
    ["of another thickness", SAME.replace("4/4", "5/4"), ""],
    ["of another width", SAME.replace("5 to 8", "5 to 9"), ""],
    ["at another price", SAME, ", price: 9"],
    ["that are bought planed", "wood: white oak, sold as: 4/4, measures: 1/2, widths: 5 to 8", ""],
  ])("%s", (_, strips, more) => {
    expect(lumber(rack(strips, more))).toHaveLength(2);
  });
});

test("what no board gives is told of its own stock", () => {
  const long = rack(SAME).replace("width: 24", "width: 120").replace("right: 24,", "right: 120,");
  const found = solveText(long).findings.filter(({ rule }) => rule === "longer-than-any-board");
  expect(found.map(({ message }) => message).join()).toMatch(/strips/);
});

describe("a board of a width that few yards have", () => {
  // Sides 13 deep are sawn 13 1/4 wide; 12 in is where random widths end in practice (common practice, no source).
  const deep = (n: number): string =>
    rack(SAME.replace("5 to 8", "5 to 14"))
      .replaceAll("back: 6", `back: ${n}`)
      .replace("depth: 6", `depth: ${n}`)
      .replace("widths: 5 to 8", "widths: 5 to 14");
  const note = (text: string): string => plain(lumber(text)[0]?.note ?? "");

  test("is told where it is bought, with the way round it", () => {
    expect(note(deep(13))).toMatch(
      /boards up to 13 1⁄4 in wide, and few are wider than 12 in: look for .* first, or glue up/,
    );
    expect(note(deep(11))).not.toMatch(/few are wider/);
  });
});
