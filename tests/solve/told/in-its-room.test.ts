/** A top that comes off for finishing goes on again where the piece will stand, if that passes no doorway with it. Common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const table = () => built("old-plans/library-table");

// 42 × 30 × 30 1/4 in with its top: 30 in is more than the 28 in of a doorway of 29 in.
test("the table is carried before its top is put on", () => {
  const top = textOfStep(stepWith(table(), /^Put the top board \(B\) on again/u));
  expect(top).toContain(
    "First: carry the piece to its room while it is empty, without the top board (B) and what runs in it: so it weighs about 61 lb",
  );
  expect(textOfStep(stepWith(table(), /^Put the two drawers on again/u))).not.toContain("carry the piece");
});

// By then the supports of the drawers stand below the holes: the first time they did not.
test("the room behind the screws of the top is judged by what stands when it goes on again", () => {
  const angle = "There is little room behind the heads: use a right-angle driver.";
  expect(textOfStep(stepWith(table(), /^Take off the two drawers/u))).toContain(angle);
  expect(textOfStep(stepWith(table(), /^Put the top board \(B\) on again/u))).toContain(angle);
});

test("what lies apart is named where the piece is sanded or coated", () => {
  expect(textOfStep(stepWith(table(), /^Sand the piece/u))).toContain(
    "What lies apart belongs to it: the two drawers and the top board (B).",
  );
  expect(textOfStep(stepWith(built("old-plans/china-closet"), /^Finish the piece/u))).toContain(
    "What lies apart belongs to it: the left door and the right door; four glass beads (M)",
  );
});

test("buttons go into what is cut for them: mortises here, a groove there", () => {
  const made = (name: string): string => textOfStep(stepWith(built(name), /^Make the wooden buttons/u));
  expect(made("old-plans/library-table")).toContain("Try the first in its mortise:");
  expect(made("dining-bench")).toContain("Try the first in its groove:");
});

test("the grain of a square top is told, and of no other", () => {
  expect(textOfStep(stepWith(built("old-plans/plant-stand"), /^Add the top panel \(C\)/u))).toContain(
    "The grain of the top panel (C) runs from left to right.",
  );
  expect(table().steps.map(textOfStep).join(" ")).not.toContain("The grain of the");
});

test("what is held before the piece is lifted is told before it is carried", () => {
  const { text } = stepWith(built("old-plans/bookcase"), /^Fit the wall strap/u);
  expect(plain(text[0] ?? "")).toMatch(/^First: before the piece is lifted tape three shelves \(V\) to the pins:/u);
  expect(text[1]).toMatch(/^Then carry the piece to its room/u);
});
