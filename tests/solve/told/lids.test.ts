/** What opens is called by what it does, where the names of its parts have none in common. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("the board of a chest with the strips round it is its lid, from the step in which that was whole", () => {
  const build = built("old-plans/cedar-chest");
  const whole = stepWith(build, /^Nail on the lid board \(C\)/u);
  const titles = build.steps.map(({ title }) => plain(title));
  for (const title of [`Hang the lid from step ${whole.number}`, "Take off the lid", "Put the lid on again"])
    expect(titles).toContain(title);
  expect(textOfStep(stepWith(build, /^Take off the lid/u))).toContain("Take off the lid, and unscrew the hardware.");
});

test("what goes by a name of its own keeps it", () => {
  const titles = built("rope-chest").steps.map(({ title }) => plain(title));
  expect(titles).toContain("Hang the lid");
});
