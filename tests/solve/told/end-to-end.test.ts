/** How long a cut is that runs out at ends that are not square. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// The aprons of the desk are 36 5/16 in long at the bottom, and shorter by the slope of 6° where the groove runs.
test("a groove that runs out at sloping ends is told from end to end, one between square ends by its length", () => {
  const desk = built("loan-desk");
  expect(textOfStep(stepWith(desk, /^Cut the grooves in the long aprons/u))).toContain(
    "Cut a groove from end to end, 3/8 in wide and 9/16 in deep: in the back face, 3/8 in from the top edge.",
  );
  expect(textOfStep(stepWith(desk, /^Cut the grooves in the short aprons/u))).toContain("Cut a groove 16 1/2 in long");
});
