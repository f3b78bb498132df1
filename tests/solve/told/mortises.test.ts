import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

/** A shelf that goes with tenons through the sides of a small case: their mortises are long across the sides. */
const CASE = `plan: 1
title: Case
units: inch
stock:
  boards: { wood: white oak, sold as: 4/4, planed to: 3/4 }
piece:
  left-side: { made of: boards, as: upright, facing: left, left: 0, front: 0, back: 4, bottom: 0, top: 20 }
  right-side: { like: left-side, right: 20 }
  shelf: { made of: boards, as: lying flat, grain: across, between: [left-side, right-side], front: 1/2, back: 3 1/2, bottom: 10 }
joints:
  - { join: shelf, to: [left-side, right-side], with: mortise and tenon }
`;

test("a mortise that is not long along its part is told with the way in which it is", () => {
  const { build, findings } = solveText(CASE);
  if (!build) throw new Error(JSON.stringify(findings.map(({ rule }) => rule)));
  const texts = build.steps.flatMap(({ text }) => text.map(plain)).filter((text) => text.includes("mortise"));
  expect(texts.join(" ")).toMatch(/in long from front to back, [\d /]+ in wide/u);
});

// Posts of 1 1/2 in: mortises 1 5/16 in deep from two faces have to meet, whatever the tenons do.
test("glue that comes through into an open mortise is wiped out, once, and only where mortises meet", () => {
  const steps = built("old-plans/piano-bench").steps.map(textOfStep);
  const said = steps.filter((text) => text.includes("glue comes through"));
  expect(said).toHaveLength(1);
  expect(said[0]).toContain(
    "The mortises for the side rail (D) of the post (A) and the frame post (B) meet what is glued now, and glue comes through: wipe it out of them at once",
  );
  // Legs of 3 1/2 in keep wood between theirs.
  expect(built("dining-bench").steps.map(textOfStep).join(" ")).not.toContain("glue comes through");
});
