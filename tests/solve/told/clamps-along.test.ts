import { expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("clamps that all press on one side of a box are told along which of its panels they lie", () => {
  // The shelves are 11 in deep: two on each.
  const text = textOfStep(stepWith(built("manuals-bookcase"), /^Glue in four left shelves/u));
  expect(text).toContain("Set the clamps so: two along each of four left shelves (G), from left to right.");
});

test("finger joints are pressed both ways: the bottoms of sockets lie in either part", () => {
  // Walls 16 3/4 in high: three on each; the chest is 39 in long and 19 1/2 in deep, and two pads are an inch, whole inches up.
  const step = stepWith(built("rope-chest"), /^Build the chest/u);
  const clamps = step.clamps?.map(({ count, opening }) => [count, Math.round(toInches(opening))]);
  expect(clamps?.toSorted()).toEqual([
    [6, 21],
    [6, 41],
  ]);
  expect(textOfStep(step)).toContain("three on the left side (C) and three on the right side (D) from front to back");
  expect(textOfStep(step)).toContain("cut out over the ends of those that come through");
});

// A lip 6 mm thick under four clamps. Common practice, no source.
test("what is thin is pressed under a caul", () => {
  const text = textOfStep(stepWith(built("spice-cabinet"), /^Build the four loose shelves/u));
  expect(text).toContain("lay a stiff straight caul as long as the shelf lip (O) on it");
  expect(textOfStep(stepWith(built("rope-chest"), /^Build the chest/u))).not.toContain("Thin wood");
});

test("what is sanded because a step closes it in is not told again for its corners", () => {
  const text = textOfStep(stepWith(built("rope-chest"), /^Build the chest/u));
  expect(text).toMatch(/sand the inside faces of .*the bottom panel \(K\)/u);
  expect(text).not.toContain("the top face of the bottom panel (K)");
});

test("a wall strap takes longer than a knob", () => {
  const build = built("overalls-chest");
  // Two straps: their studs are found and bored, and the piece is moved twice (common practice, no source).
  expect(stepWith(build, /^Fit the wall straps/u).bench).toBeGreaterThanOrEqual(40);
});

// The base is nailed when its mitres are closed: clamps that are told after the nails are set too late.
test("where clamps go is told before anything is driven", () => {
  const text = textOfStep(stepWith(built("old-plans/cedar-chest"), /^Glue in the short base \(I\), at the left/u));
  expect(text.indexOf("Set the clamps so:")).toBeGreaterThan(text.indexOf("Clamp round the whole"));
  expect(text.indexOf("Set the clamps so:")).toBeLessThan(text.indexOf("Drive 3 nails"));
});
