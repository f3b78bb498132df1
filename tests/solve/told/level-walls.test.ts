import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

// From the top panel on one side and the shelf on the other every error between these two would tilt the drawer.
test("what both sides of a drawer run on is measured from one part, and set by one spacer", () => {
  const build = built("index-cabinet");
  const steps = build.steps.filter(
    ({ title }) => title.startsWith("Screw on the packing") || title.startsWith("Screw on two packings"),
  );
  const texts = steps.map(({ text }) => plain(text.join(" ")));
  expect(texts).toHaveLength(4);
  for (const text of texts.filter((each) => each.includes("Place the packing")))
    expect(text).toMatch(/2 1\/8 in from the fixed shelf \(C\)\. .*Stand (?:it|each) on a spacer 2 1\/8 in wide/u);
  expect(texts.join(" ")).not.toMatch(/from the top panel/u);
});
