/**
 * Nothing narrower than 1 1/2 in (40 mm) or shorter than 12 in (300 mm) is planed by itself (common practice, no source): sticks of one
 * thickness are sawn as one piece that is large enough. Sizes of pieces by hand, with a kerf of 1/8 in between each two.
 */
import { describe, expect, test } from "vitest";
import type { Blank, Build } from "../../../src/solve/build.ts";
import { inches, toMillimetres, toNumber } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { sound } from "../../parse/assemblies/opened.ts";
import { plain, stepWith, textOfStep } from "../told/examples.ts";

const inch = (size: Blank["width"]): number => toNumber(size) / toNumber(inches(1));
/** How many of a mark come from each piece, and its width and length in inches. */
const piecesOf = ({ blanks }: Build, mark: string) =>
  blanks
    .filter((blank) => blank.mark === mark)
    .map(({ alsoParts = [], width, length }) => [1 + alsoParts.length, inch(width), inch(length)]);

describe("the beads and blocks of the china closet", () => {
  const build = built("old-plans/china-closet");

  // 4 × 1/2 + 3 × 1/8 = 2 3/8; two cleats 2 × 1 1/4 + 1/8 = 2 5/8; four blocks 1 1/4 × 2 1/2 in line are 10 3/8 long: less than 12.
  test("are pieces a machine takes, in the layouts too", () => {
    expect(piecesOf(build, "L")).toEqual([[4, 2.375, 40.5]]);
    expect(piecesOf(build, "T")).toEqual([[4, 2.375, 13.5]]);
    expect(piecesOf(build, "X")).toEqual([[2, 2.625, 38.75]]);
    expect(piecesOf(build, "AC")).toEqual([[4, 1.5, 12]]);
    const placed = build.layouts.flatMap(({ placements }) => placements).filter(({ mark }) => mark === "L");
    expect(placed.map(({ width, length }) => [inch(width), inch(length)])).toEqual([[2.375, 40.5]]);
    expect(build.layouts.filter(({ stock }) => stock === "boards")).toHaveLength(9);
  });

  test("are told as one piece where they are sawn, and ripped when it has its thickness", () => {
    const sawn = textOfStep(stepWith(build, /^Saw the rough pieces from white oak, 4\/4$/u));
    expect(sawn).toContain("4 glass beads (L): in one piece 2 3/8 in wide, 40 1/2 in long.");
    expect(sawn).toContain("4 shelf blocks (AC): in one piece 1 1/2 in wide, 12 in long.");
    expect(sawn).toContain(
      "L, M, Q, T and AC are narrower than 1 1/2 in: the layouts have them in pieces as wide as that",
    );
    expect(sawn).toContain(
      "AC is shorter than 12 in: the layouts have it in a piece as long as that at least, in line.",
    );
    expect(textOfStep(stepWith(build, /^Plane the rough pieces$/u))).toContain("AC are not parted yet");
    const sized = textOfStep(stepWith(build, /^Bring the parts from white oak, 4\/4 planed to 3\/4 to size$/u));
    expect(sized).toContain("Rip L and T off their pieces one after another");
    expect(sized).toMatch(
      /Leave four glass beads \(M\) in their piece, one edge of it straight: cut to size in step \d+/u,
    );
    expect(textOfStep(stepWith(build, /^Cut the parts of two doors to fit$/u))).toContain(
      "Rip M and Q off their pieces",
    );
  });
});

test.each(["old-plans/bookcase", "spice-cabinet", "old-plans/piano-bench", "index-cabinet"])(
  "no rough piece of %s is too small to plane",
  (name) => {
    const { blanks, design } = built(name);
    const [wide, long] = design.units === "mm" ? [40, 300] : [38.1, 304.8];
    const rough = blanks.filter(({ why }) => why === "rough");
    expect(rough.length).toBeGreaterThan(0);
    const small = rough.filter(
      ({ width, length }) => toMillimetres(width) < wide - 1e-9 || toMillimetres(length) < long - 1e-9,
    );
    expect(small.map(({ mark }) => mark)).toEqual([]);
  },
);

/** A frame with strips across it so wide, of boards so wide. */
const rack = (count: number, wide: string, boards = "5 to 8"): string => `plan: 1
title: Rack
units: inch
outside: { width: 24, depth: 6, height: 24 }
stock:
  sides: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 5 to 8 }
  strips: { wood: red oak, sold as: 4/4, planed to: 3/4, widths: ${boards} }
piece:
  left: { made of: sides, as: upright, facing: left, left: 0, front: 0, back: 6, bottom: 0, top: 24 }
  right: { made of: sides, as: upright, facing: right, right: 24, front: 0, back: 6, bottom: 0, top: 24 }
${Array.from({ length: count }, (_, i) => `  strip-${i}: { made of: strips, as: on edge, facing: front, between: [left, right], front: 0, bottom: ${2 + 2 * i}, up: ${wide} }`).join("\n")}
joints:
  - { join: [${Array.from({ length: count }, (_, i) => `strip-${i}`).join(", ")}], to: [left, right], with: dowels }
`;
const stripsOf = (build: Build) => piecesOf(build, build.blanks.find(({ stock }) => stock === "strips")?.mark ?? "");

describe("strips 22 1/2 in long and 1 in wide, sawn 1 1/4 wide and 23 1/2 long", () => {
  // Two: 2 5/8. Eight: four pieces of two take as much wood as two of four, and are smaller. Three: one of three, 4 wide.
  test.each([
    [2, [[2, 2.625]]],
    [3, [[3, 4]]],
    [
      8,
      [
        [2, 2.625],
        [2, 2.625],
        [2, 2.625],
        [2, 2.625],
      ],
    ],
  ])("%i of them", (count, pieces) => {
    expect(stripsOf(sound(rack(count, "1"))).map(([n, wide]) => [n, wide])).toEqual(pieces);
  });

  // One alone is sawn as wide as a machine takes, 1 1/2.
  test("one alone is sawn wider", () => {
    const build = sound(rack(1, "1"));
    expect(stripsOf(build).map(([n, wide]) => [n, wide])).toEqual([[1, 1.5]]);
    expect(plain(build.steps.flatMap(({ text }) => text).join(" "))).toContain(
      "is narrower than 1 1/2 in: the layouts have it in a piece as wide as that at least, with wood to spare",
    );
  });

  test("what is 1 1/2 wide as it is sawn stays by itself", () => {
    expect(stripsOf(sound(rack(2, "1 1/4"))).map(([n, wide]) => [n, wide])).toEqual([
      [1, 1.5],
      [1, 1.5],
    ]);
  });

  // Boards 1 1/2 wide less 1/4 for a straight edge, less a kerf of 1/8 for the other: a strip as wide as that.
  test("where no board is wide enough they are planed by hand", () => {
    const build = sound(rack(2, "1", "1 1/4 to 1 1/2"));
    expect(stripsOf(build).map(([n, wide]) => [n, wide])).toEqual([
      [1, 1.125],
      [1, 1.125],
    ]);
    expect(plain(build.steps.flatMap(({ text }) => text).join(" "))).toContain("the boards give no larger piece");
  });
});
