import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("a tenon is told as it is left by the groove of its own part", () => {
  // The tenon is laid out 3/16 in from the edge, 1 9/16 in wide; the groove in that edge is 3/8 in deep, and takes 3/16 in of it: 1 9/16 − 3/16.
  const text = textOfStep(stepWith(built("index-cabinet"), /^Cut the joints in the door rails/u));
  expect(text).toContain("Cut two tenons 1/4 in thick, 1 3/8 in wide and 3/8 in long:");
  expect(text).toContain("at the left end, 1/4 in from the front face, 3/8 in from the top edge");
});

test("holes for pegs are called so, as the pegs are where they are driven", () => {
  const build = built("loan-desk");
  expect(textOfStep(stepWith(build, /^Cut the tongues in the panel/u))).toContain("Bore two peg holes, 1/4 in across");
  const ends = textOfStep(stepWith(build, /^Cut the grooves in the breadboard ends/u));
  expect(ends).toContain("Bore three peg holes, 1/4 in across");
  expect(ends).not.toContain("dowel");
});

// Two tenons that meet in a post are mitred: with the corner on, none goes into its mortise when the other is in.
test("a tenon loses its corner in the step that cuts it, before it is fitted", () => {
  const build = built("old-plans/piano-bench");
  for (const title of [/^Cut the joints in the end rails/u, /^Cut the joints in the side rails/u]) {
    const text = textOfStep(stepWith(build, title));
    expect(text.indexOf("Cut the corner off")).toBeGreaterThan(text.indexOf("Cut two tenons"));
    expect(text.indexOf("Fit each to its mortise")).toBeGreaterThan(text.lastIndexOf("Cut the corner off"));
  }
  expect(build.steps.filter(({ title }) => title.startsWith("Shape"))).toEqual([]);
});

test("a tongue across the grain is told how it is cut", () => {
  const text = textOfStep(stepWith(built("loan-desk"), /^Cut the tongues in the panel/u));
  expect(text).toContain("Score the shoulder right round with a knife, 1 in from the end of the tongue.");
  expect(text).toContain("Saw off what stands beside it, back to the shoulder, last.");
});
