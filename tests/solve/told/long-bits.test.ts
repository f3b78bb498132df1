import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

/** A tread of some inches, screwed to two legs from above. */
const bitsOf = (thick: string): string => {
  const { build } = solveText(`plan: 1
title: Step
units: inch
stock:
  tread: { wood: white oak, sold as: 10/4, planed to: ${thick}, widths: 4 to 8 }
  legs: { wood: white oak, sold as: 10/4, planed to: 2, widths: 4 to 8 }
piece:
  tread: { made of: tread, as: lying flat, grain: across, left: 0, right: 24, front: 0, back: 4, top: 12 }
  left-leg: { made of: legs, as: upright, facing: left, left: 0, front: 0, back: 4, bottom: 0, under: tread }
  right-leg: { like: left-leg, left: 22 }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
`);
  const told = build?.tools.find(({ tool }) => tool.startsWith("Drill bits"));
  return plain(`${told?.tool} ${told?.why}`);
};

test("a bit that has to reach farther than a jobber drill of ISO 235 is told with its length", () => {
  // Through 1 1/2 in and more than an inch into the leg: a drill of 3 mm is 61 mm long in all.
  expect(bitsOf("1 1/2")).toMatch(/in \(at least [3-5][^)]* in long\).* with a shorter one mark through/u);
});

test("one that reaches is told by its size alone", () => {
  expect(bitsOf("1/2")).toMatch(/^Drill bits: [^(]* for the holes listed in the plan$/u);
});
