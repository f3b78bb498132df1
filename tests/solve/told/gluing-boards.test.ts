/** Boards that are glued up; common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// 1 in of rough wood for 1/4 in: half of the rest, 5/8, would leave 3/8 in to plane by hand; 3/16 in over is enough.
test("boards for a thin panel are planed near to its thickness before they are glued", () => {
  const text = textOfStep(stepWith(built("old-plans/medicine-cabinet"), /^Plane the boards for the back panel/u));
  expect(text).toContain("all at one setting, to 7/16 in");
});
