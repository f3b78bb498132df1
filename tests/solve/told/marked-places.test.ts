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
    "By what is written on them take the front right leg (B), the right apron (D) and the back right leg (A).",
  );
  // What was put together before is taken as a whole, and all of a mark need no choice.
  for (const title of [/^Add the frame from step/u, /^Glue in two long aprons/u])
    expect(textOfStep(stepWith(build, title))).not.toContain("By what is written");
});
