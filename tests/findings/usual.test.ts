/** Findings advise what is usual for the wood that they are about. */
import { expect, test } from "vitest";
import { drawerExample } from "../../src/findings/drawer-example.ts";
import { solveText } from "../examples/compiled.ts";

const table = (top: string): string => `plan: 1
title: Table for the saw
units: inch
outside: { width: 40, depth: 14, height: 32 }
stock:
  legs: { sold as: 8/4, wood: cherry, planed to: 1 3/4, widths: 4 to 8 }
  cherry: { sold as: 4/4, wood: cherry, planed to: 3/4, widths: 5 to 8 }
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
piece:
  table-top: { kind: top, on: frame, ${top} }
  frame: { kind: table, legs: { made of: legs, square: 1 3/4 }, aprons: { made of: cherry, wide: 4 } }
`;
const helpOf = (text: string, wanted: string) => solveText(text).findings.find(({ rule }) => rule === wanted)?.help;

test("a wide top of solid wood that is joined to nothing is offered a joint that lets it move; plywood does not", () => {
  expect(helpOf(table("made of: cherry, boards: 3"), "part-floats")).toMatch(
    /with: slotted screws \}`, which let it move/,
  );
  expect(helpOf(table("made of: ply"), "part-floats")).toMatch(/with: screws \}`;/);
});

test("a groove as wide as its sheet is told to be cut in two passes, and not to be made narrower", () => {
  const help = helpOf(drawerExample(["measures: 7/32", "measures: 0.2 in"]), "cutter-does-not-exist");
  expect(help).toMatch(/two passes .* as is usual where a sheet goes in/);
  expect(help).not.toMatch(/or make it/);
});
