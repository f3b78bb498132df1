import { expect, test } from "vitest";
import { said, solveText } from "../../examples/compiled.ts";
import { partsOf } from "./opened.ts";

/** A low case of 400 × 340 on posts of 40: its panels lie between them, 260 deep and 400 less the feet high. */
const cabinet = (foot: number, made: string, panels = "") => `plan: 1
title: Case on posts
units: mm
outside: { width: 400, depth: 340, height: 400 }
stock:
  ply: { sold as: 18 mm birch plywood, measures: 18 }
  oak: { sold as: 20 mm rough, wood: european oak, planed to: 12, widths: 120 to 300 }
  posts: { sold as: 60 mm rough, wood: european oak, planed to: 40 }
piece:
  cabinet:
    kind: case
    made of: ply
    join: dowels
    sides:
      made of: ${made}
      posts: { made of: posts, square: 40, foot: ${foot} }
      panels: { lie: in the middle${panels} }
`;

// Let in 6 at either side, less what the groove leaves for solid wood to move: 260 + 2 × 6 at the most.
test.each([
  ["lies where it is wider than high", cabinet(220, "oak"), /^12 × 180 × 2(?:6|7)\d$/],
  ["stands where it is higher than wide", cabinet(100, "oak"), /^12 × 2(?:6|7)\d × 300$/],
  ["stands where that is said", cabinet(220, "oak", ", grain: up"), /^12 × 2(?:6|7)\d × 180$/],
  ["of plywood stands", cabinet(220, "ply"), /^18 × 2(?:6|7)\d × 180$/],
])("a panel between posts %s", (_, text, size) => {
  expect(partsOf(text)["cabinet.left-side.panel"]).toMatch(size);
});

// 23/32 less a dado of 3/16 leaves 17/32 beside the dowels; a third of the wood, 1/4, would leave 15/32 and no dowel that fits.
test("panels that are dowelled to posts leave wood beside the dowels by themselves", () => {
  const { build, findings } = solveText(`plan: 1
title: Case on posts
units: inch
outside: { width: 36, depth: 14, height: 31 }
stock:
  ply: { sold as: 3/4 red oak plywood, measures: 23/32 }
  oak: { sold as: 8/4, wood: red oak, planed to: 1 1/2 }
piece:
  cabinet:
    kind: case
    made of: ply
    sides:
      posts: { made of: oak, square: 1 1/2, foot: 8 }
    openings:
      down:
        - { high: 5 }
        - { divider: rail, made of: oak, wide: 1 1/2 }
        - { high: the rest, shelves: 1 }
`);
  expect(said(findings.filter(({ severity }) => severity === "error"))).toEqual([]);
  expect(build?.fasteners.some(({ kind }) => kind === "dowel")).toBe(true);
});
