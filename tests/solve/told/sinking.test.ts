/** What is glued up lying, with nothing under it. Common practice, no source; sizes by hand from the plan. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// Panels 11 1/4 in deep, the divider and its shelves 11: on their back they end 1/4 in above the bench, where the back panel comes later.
test("what is less deep than its case is packed while the case lies on its back", () => {
  const text = (title: RegExp): string => textOfStep(stepWith(built("manuals-bookcase"), title));
  expect(text(/^Glue in the divider/u)).toContain("Put packing 1/4 in thick under the divider (C)");
  expect(text(/^Glue in four left shelves/u)).toContain("Put packing 1/4 in thick under the four left shelves (G)");
  expect(text(/^Glue in the left side/u)).not.toContain("packing");
});

// The dado runs through to the front edge, and the panel is 1/4 in deeper than the divider behind.
test("what can be shifted along its dado is told on which side it is flush", () => {
  expect(textOfStep(stepWith(built("index-cabinet"), /^Build the cabinet/u))).toContain(
    "The divider (H) lies flush with the front of the top panel (B).",
  );
});

// Lying on their fronts the lower shelf, 6 in deep, begins 5/8 in above the sides, the upper, 4 1/2 in deep, 2 1/8 in; its back lies on it.
test("what a dado 1/4 in deep holds by one end has packing under the other until that is closed", () => {
  const text = textOfStep(stepWith(built("old-plans/wall-shelf"), /^Glue in the left side/u));
  expect(text).toContain(
    "Put packing 1 1/2 in thick, besides what the rest lies on, under the free end of the upper shelf (B) as soon as it is let in: nothing else carries it until the right side (D) is on.",
  );
  expect(text.indexOf("Set the upper shelf (B)")).toBeLessThan(text.indexOf("Set the upper back (F)"));
  expect(text.match(/Put packing/gu)).toHaveLength(1);
});

// Panels run in grooves along all their edges.
test("a panel in grooves needs none", () => {
  expect(textOfStep(stepWith(built("rope-chest"), /^Build the chest/u))).not.toContain("free end");
  expect(built("key-cabinet").steps.map(textOfStep).join(" ")).not.toContain("free end");
});
