import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("parts that were marked from each other are taken by what is written on them", () => {
  const build = built("loan-desk");
  const drilled = textOfStep(stepWith(build, /^Drill the legs \(A\)/u));
  expect(drilled).toContain(
    "Write on each of them where it goes, and on what it was marked from which end goes to it: from here on they are not exchanged.",
  );
  const [first] = build.steps.filter(({ title }) => /^Glue up the leg/u.test(title));
  expect(first && textOfStep(first)).toContain(
    "By what is written on them take the front right leg (B), the right short apron (D) and the back right leg (A).",
  );
  // Where all of a mark come, none is left to choose from, but each has its own holes to go to.
  expect(textOfStep(stepWith(build, /^Glue in two long aprons/u))).toContain(
    "By what is written on them bring each of two long aprons (C) to its own place, and each end to its own: none is exchanged or turned round.",
  );
  // What was put together before is taken as a whole.
  expect(textOfStep(stepWith(build, /^Add the frame from step/u))).not.toContain("By what is written");
});

// The aprons of the desk are marked from its left legs: of two like frames one goes to each end.
test("of two frames that are not exchanged the one that is laid down is told by its parts", () => {
  const text = textOfStep(stepWith(built("loan-desk"), /^Glue in two long aprons/u));
  expect(text).toContain("Lay the front left leg (A), the back left leg (B) and the left short apron (D) on battens");
  // Rails of drawers that are all alike are not told apart.
  expect(textOfStep(stepWith(built("dining-bench"), /^Add the assembly from step 14/u))).toContain(
    "Lay two legs (B) and the short apron (E) flat on battens",
  );
});
