import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("pins of shelves that come off for the finish come out too, and are in before those go on again", () => {
  const build = built("manuals-bookcase");
  expect(textOfStep(stepWith(build, /^Take off four loose shelves/u))).toContain(
    "Pull the pins of four loose shelves (H) out too, and put them in a bag",
  );
  expect(textOfStep(stepWith(build, /^Put four loose shelves .* on again/u))).toMatch(
    /push the pins of four loose shelves \(H\) into their holes, all of one at one height\..*put four loose shelves \(H\) back/u,
  );
});

test("pins that are pulled so that a shelf passes are not told again", () => {
  const build = built("index-cabinet");
  expect(textOfStep(stepWith(build, /^Take off the three drawers/u))).not.toContain("out too");
});
