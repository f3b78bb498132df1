/** Dowels go into a part before that is glued to anything: nothing is hammered at whose glue is not hard. Common practice, no source. */
import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const FRAME = `plan: 1
title: Frame
units: inch
stock:
  oak: { wood: white oak, sold as: 5/4, planed to: 1, widths: 4 to 8 }
piece:
  left-leg: { called: leg, made of: oak, as: upright, facing: front, left: 0, across: 2, front: 0, bottom: 0, top: 24 }
  right-leg: { called: leg, like: left-leg, left: 22 }
  upper-rail: { made of: oak, as: on edge, facing: front, between: [left-leg, right-leg], front: 0, up: 3, top: 24 }
  lower-rail: { made of: oak, as: on edge, facing: front, between: [left-leg, right-leg], front: 0, up: 3, bottom: 3 }
  muntin: { made of: oak, as: upright, facing: front, up: between lower-rail and upper-rail, front: 0, across: 3, at: { across: middle } }
joints:
  - { join: muntin, to: [upper-rail, lower-rail], with: mortise and tenon }
  - { join: [upper-rail, lower-rail], to: [left-leg, right-leg], with: dowels }
`;

test("rails that are glued up with a muntin have the dowels of their ends by then, also where no dowel is closed in yet", () => {
  const { build } = solveText(FRAME);
  if (!build) throw new Error("the frame has an order of work");
  const glueUp = stepWith(build, /^Glue up two rails \(B\) and the muntin/u);
  expect(textOfStep(glueUp)).toContain(
    "Put glue into the dowel holes of two rails (B), and tap the dowels in, though they stand free until a later step: nothing that is glued is hammered at. Use 8 dowels",
  );
  expect(textOfStep(stepWith(build, /^Glue in two legs/u))).toContain("Two rails (B) have their dowels already.");
});

// Dowel centres go into the holes of the rails: they are empty yet.
test("holes are marked from others before dowels fill those", () => {
  const { build } = solveText(FRAME);
  const titles = build?.steps.map(({ title }) => plain(title)) ?? [];
  const drill = titles.findIndex((title) => title.startsWith("Drill the legs"));
  expect(drill).toBeGreaterThan(0);
  expect(titles.findIndex((title) => title.startsWith("Glue up two rails"))).toBeGreaterThan(drill);
});

test("the rails of a face frame have theirs before short stiles are glued between them", () => {
  const cabinet = built("index-cabinet");
  expect(textOfStep(stepWith(cabinet, /^Build the face frame/u))).toContain(
    "dowel holes of two rails (P) and two short face frame stiles (W), and tap the dowels in",
  );
  expect(textOfStep(stepWith(cabinet, /^Glue in two long face frame stiles/u))).toContain(
    "Put glue into the dowel holes of the bottom rail (Q), and tap the dowels in. Use 2 dowels 3/8 in × 2 in. Two rails (P) have their dowels already.",
  );
});
