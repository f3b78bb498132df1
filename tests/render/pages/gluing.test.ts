import { expect, test } from "vitest";
import { orderOf } from "../../../src/render/pages/gluing.ts";
import { built } from "../../examples/compiled.ts";

// The step taps A, C, B and D together, and sets the bottom in when they are square.
test("the table has the parts in the order in which the step brings them", () => {
  const build = built("rope-chest");
  const step = build.steps.find(({ title }) => title.startsWith("Build the chest"));
  expect(step && orderOf(build, step)).toBe("A, C, B, D, K");
});
