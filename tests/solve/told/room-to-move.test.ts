import { expect, test } from "vitest";
import type { Build } from "../../../src/solve/build.ts";
import { built, solveText, textOf } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("in a step that glues and screws on what slides, glue keeps off what that slides on", () => {
  expect(textOfStep(stepWith(built("old-plans/bookcase"), /^Add the bottom board/u))).toContain(
    "Spread glue where they meet, and none on the bottom cleat (R) and the right bottom cleat (S): there the wood must be able to move.",
  );
  // Where all is glued nothing is excepted.
  for (const step of built("old-plans/wall-shelf").steps) expect(textOfStep(step)).not.toContain("and none on");
});

test("jaws do not press on the hollow of an arch without a seat", () => {
  const build = built("old-plans/bookcase");
  const text = textOfStep(stepWith(build, /^Add the bottom board/u));
  expect(text).toContain("On the bottom the bottom rail (L) is hollow where clamps press");
  expect(text).toContain("lay what was sawn out of it back in");
});

test("solid wood that is cut to fit across its grain is left room to swell, but not where it is nailed to what bounds it", () => {
  // Wood Handbook FPL-GTR-190, Tables 13-2 and 13-5: 6 to 10 % in a heated house; yellow-poplar moves 0.00289 of its width for each per cent, 0.14 in over 12.
  // Without play behind the piece before them they are measured for.
  const { build } = solveText(textOf("old-plans/bookcase").replace("deep: 11 7/8,", "deep: 12,"));
  const shelves = textOfStep(stepWith(build as Build, /^Cut three shelves/u));
  expect(shelves).toMatch(
    /Width: expected 12 in\. Measure from .*; cut to the smaller, and in dry weather 5\/32 in less: across its grain it swells/u,
  );
  expect(shelves).not.toContain("without a gap");
  // On pins it is measured along too, and has its play there.
  expect(shelves).toMatch(
    /Length: expected 28 1\/2 in\. Measure from the left side \(A\) to the right side \(B\).*less 1\/4 in of play/u,
  );
  const lid = textOfStep(stepWith(built("old-plans/cedar-chest"), /^Cut the lid board/u));
  expect(lid).not.toContain("it swells");
  expect(lid).toContain("without a gap");
});
