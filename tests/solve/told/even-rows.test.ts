/** Rows of holes; common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// 28 1/4 in in three parts are 9 5/12 in: three times 9 27/64 in would come out 1/64 in too far.
test("rows that no marks of a tape part evenly are stepped off between the first and the last", () => {
  const text = textOfStep(stepWith(built("old-plans/bookcase"), /^Cut the joints in the top board/u));
  expect(text).toContain("four rows at even distances, from 1 1/2 in to 29 3/4 in from the left end");
});

test("rows that marks part evenly are told by their distance", () => {
  const text = textOfStep(stepWith(built("old-plans/wall-shelf"), /^Drill the lower back/u));
  expect(text).toContain("three rows, 14 in apart, from 1 in to 29 in from the left end");
});
