import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";

test("plugs are no glue-up: nothing of them stands among boards and clamps", () => {
  const { build } = solveText(`plan: 1
title: Step
units: inch
stock:
  wood: { wood: white oak, sold as: 5/4, planed to: 1, widths: 4 to 8 }
piece:
  tread: { made of: wood, as: lying flat, grain: across, boards: 2, left: 0, right: 16, front: 0, back: 9, top: 9 }
  left-leg: { made of: wood, as: upright, facing: left, boards: 2, left: 1, front: 0, back: 9, bottom: 0, under: tread }
  right-leg: { like: left-leg, left: 14 }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws, count: 2, screw: { head: plugged } }
`);
  const steps = build?.steps ?? [];
  expect(steps.some(({ title }) => title === "Plug the screw holes")).toBe(true);
  // Three slabs of two boards each.
  const glued = steps.filter(({ kind }) => kind === "glue-up");
  expect(glued.map(({ title }) => title).filter((title) => !title.startsWith("Glue up"))).toEqual([]);
  expect(glued.length).toBeGreaterThan(0);
});
