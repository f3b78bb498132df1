/** A drilling strip lies on lines that are drawn on the part: the step that bores by it tells where they are. By hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// Sides 14 in deep. The shelf is 11 7/8 in deep and ends 3/8 in before their back, its pins 1 1/2 in from its edges: 3/8 + 1 1/2 = 1 7/8 in from the
// back, and 14 - 3/8 - 11 7/8 + 1 1/2 = 3 1/4 in from the front.
test("two lines are told from the edge that each is near", () => {
  expect(textOfStep(stepWith(built("old-plans/bookcase"), /^Cut the joints in the left side/u))).toMatch(
    /Draw the lines of the holes 3 1\/4 in from the front edge and 1 7\/8 in from the back edge\. Bore by jig 1 for the shelf pins/u,
  );
});

// Five drawers, 6 7/8 in from one to the next: 3 31/32 + 6 7/8 = 10 27/32, and so on.
test("a row of lines is told from one end", () => {
  expect(textOfStep(stepWith(built("overalls-chest"), /^Drill the left side panel/u))).toContain(
    "Draw the lines of the holes 3 31/32 in, 10 27/32 in, 17 23/32 in, 24 19/32 in and 31 15/32 in from the bottom end. Bore by jig",
  );
});
