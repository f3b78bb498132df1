import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("clamps that all press on one side of a box are told along which of its panels they lie", () => {
  // The panels at front and back are 17 1/2 in high: three on each.
  const text = textOfStep(stepWith(built("rope-chest"), /^Build the chest/u));
  expect(text).toContain(
    "Set the clamps so: three along the front panel (A) and three along the back panel (B), from left to right.",
  );
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
