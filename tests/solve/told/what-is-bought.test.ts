/** What a builder has to know of hardware to buy and to fix it; figures by hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const inHand = (name: string): string => textOfStep(stepWith(built(name), /^Have the hardware/u));

// Slides 14 in long take screws 37, 165 and 293 mm behind their front ends; holes 32 mm apart: the first, and the fourth and eighth after it.
test("of the holes of a slide those are told that are bored for", () => {
  expect(inHand("index-cabinet")).toContain(
    "the first 37 mm from the front end, bored ahead for the first, fifth and ninth of them from there.",
  );
});

// Twice 12.9 and 13.2 mm are 1.0157 and 1.0394 in: 1 3/64 in is more, 1 1/32 in lies between.
test("where a drawer is cut, it is told what its slides want beside it", () => {
  const text = textOfStep(stepWith(built("index-cabinet"), /^Cut the parts of three drawers/u));
  expect(text).toContain(
    "1 3/64 in less than the smallest of these, 8 9/16 in wide: a pair of slides wants 1.016 to 1.039 in, and card behind them makes up the rest.",
  );
  expect(text).toContain(
    "1 1/32 in less than the smallest of these, 8 9/16 in wide: a pair of slides wants 1.016 to 1.039 in. ",
  );
});

// The lid's weight times half its 20 in: the record has 3.632 kg, 8.008 lb.
test("a lid support is told by its side and by what it has to hold", () => {
  expect(inHand("rope-chest")).toContain("for the left end of a lid, seen from the front");
  expect(inHand("rope-chest")).toMatch(/weighs about 8 lb and is 20 in from back to front: .* that is 81 inch-pounds/u);
  expect(inHand("index-cabinet")).not.toContain("lid support");
});

test("recesses of figure-eight fasteners are as large as the fastener that is bought", () => {
  const build = built("workbench-cart");
  expect(textOfStep(stepWith(build, /^Drill the upper end rails/u))).toContain(
    "two recesses, 19 mm wide and 3 mm deep",
  );
  expect(build.purchases.map(({ item }) => plain(item))).toContain("figure-eight fastener 19 mm × 3 mm");
});

test("in masonry a plug is told by the screw that it is for, and its bit by the plug", () => {
  const build = built("key-cabinet");
  expect(textOfStep(stepWith(build, /^Screw the wall cleat/u))).toMatch(
    /for a screw 3\/16 in thick.*a masonry bit as wide as the plug says/u,
  );
  expect(build.tools.some(({ tool }) => tool.startsWith("Hammer drill"))).toBe(true);
});

// A cleat 490 mm long before studs 400 mm apart, screws 1/2 in from its ends at least: 490 - 400 - 12.7 is 77.3.
test("where two studs lie behind a cleat in some places only, it is told where it hangs", () => {
  expect(textOfStep(stepWith(built("spice-cabinet"), /^Screw the wall cleat/u))).toContain(
    "Two lie behind it only where the middle of the first is 12.5 mm to 77.5 mm to the right of the left end of the wall cleat (L), 47.5 mm to 112.5 mm from the left of the piece",
  );
  // A back 29 1/2 in long between sides before studs that are 16 in apart where nothing is said; beside a side a drill wants 1 1/4 in:
  // 29 1/2 - 16 - 1 1/4 is 12 1/4. Its ends are hidden in rabbets.
  expect(textOfStep(stepWith(built("old-plans/wall-shelf"), /^Screw the upper back/u))).toContain(
    "as a rule 16 in apart. Two lie behind it only where the middle of the first is 1 1/4 in to 12 1/4 in to the right of the inner face of the left side (C)",
  );
});
