import { expect, test } from "vitest";
import { boresOf } from "../../../src/render/drawing/part/bores.ts";
import { lying } from "../../../src/render/drawing/part/lying.ts";
import { placesOf } from "../../../src/render/drawing/part/places.ts";
import { partInWork } from "../../../src/solve/build/part-after.ts";
import { built } from "../../examples/compiled.ts";

// The stile is 2 in wide, its groove 3/8 in deep (the plan): its bottom lies 1 5/8 in from the outer edge, where the mitre ends the groove at 1 3/4.
test("the bottom of a groove that was cut before has its figure where that of a corner beside it would be taken for it", () => {
  const build = built("old-plans/medicine-cabinet");
  const step = build.steps.find(({ title }) => title === "Shape the left door stile (E)");
  const id = step?.actions.flatMap((action) => (action.do === "machine" ? [action.part] : []))[0];
  const part = build.parts.find((each) => each.id === id);
  if (!step || !part) throw new Error("the stile is not shaped");
  const lies = lying(partInWork(build, part, step.number), []);
  const { across } = placesOf(lies, boresOf(lies).ladders);
  const inches = across.map((value) => (value - (across[0] ?? 0)) / 406_400);
  const fromOuter = (all: readonly number[]): readonly number[] => all.map((each) => Math.round(each * 64) / 64);
  expect([fromOuter(inches), fromOuter(inches.map((each) => 2 - each).toReversed())]).toContainEqual([
    0, 1.625, 1.75, 2,
  ]);
});
