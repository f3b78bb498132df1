/** What holds parts that lie on nothing yet, and which heads have little room; common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// The left end and two rails 760 mm long that only it holds lie on the front of one leg; rails 40 mm thick stand in the middle of legs 70 mm thick.
test("work that reaches out from one leg is propped when the first part comes, not with the last", () => {
  const text = textOfStep(stepWith(built("workbench-cart"), /^Bolt on two rails/u));
  expect(text).toContain(
    "It does not lie by itself yet: set props 465 mm high under the far end of the back upper rail (D) and the back lower rail (E)",
  );
  expect(text).toContain(
    "set blocks 15 mm high, or offcuts cut to that, under the two rails (C) at the free end while they are bolted, and leave them there until the leg (B) holds the other end.",
  );
});

// The foot of the brace stands beside one of six screws.
test("another tool is asked for where heads are hard to reach, and not for all", () => {
  const text = textOfStep(stepWith(built("workbench-cart"), /^Screw on the shelf/u));
  expect(text).toContain(
    "There is little room behind the head into the back lower rail (E), 380 mm from the left end of the shelf (J): use a right-angle driver there",
  );
});
