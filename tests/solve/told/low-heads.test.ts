/** Room for a chuck and a hammer above the bench. Common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

const RAISED =
  "Raise the work on blocks at least 1 1/2 in high, or let it stand out over the edge of the bench, where heads go in so low";

// The board lies on its front edge; its nails go in from the bottom, 1/2 in and 1 1/2 in above the bench.
test("what is driven from the side close above the bench is raised", () => {
  expect(
    textOfStep(stepWith(built("old-plans/bookcase"), /^Nail the bottom board \(K\) and the center piece/u)),
  ).toContain(RAISED);
});

test("what is driven from above is not", () => {
  expect(built("boot-bench").steps.map(textOfStep).join(" ")).not.toContain(RAISED);
});

// A drawer is light, and stands on either side: for its nails it is laid on the other one.
test("what is turned for its nails is not raised besides", () => {
  const box = textOfStep(stepWith(built("old-plans/library-table"), /^Build the two drawers/u));
  expect(box).toContain("turn the work: the side that is nailed lies uppermost");
  expect(box).not.toContain(RAISED);
});
