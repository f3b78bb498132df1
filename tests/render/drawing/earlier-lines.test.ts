import { expect, test } from "vitest";
import { boresOf } from "../../../src/render/drawing/part/bores.ts";
import { lying } from "../../../src/render/drawing/part/lying.ts";
import { placesOf } from "../../../src/render/drawing/part/places.ts";
import { partInWork } from "../../../src/solve/build/part-after.ts";
import { built } from "../../examples/compiled.ts";

/** The figures across a part in the drawing of a step, in inches, from the edge where the step tells them. */
function across(plan: string, of: string): readonly number[] {
  const build = built(plan);
  const step = build.steps.find(({ title }) => title === of);
  const id = step?.actions.flatMap((action) => (action.do === "machine" ? [action.part] : []))[0];
  const part = build.parts.find((each) => each.id === id);
  if (!step || !part) throw new Error(`no step “${of}”`);
  const lies = lying(partInWork(build, part, step.number), []);
  const places = placesOf(lies, boresOf(lies).ladders).across;
  const [low, high] = [places[0] ?? 0, places.at(-1) ?? 0];
  return places.map((value) => (lies.zero.across === "high" ? high - value : value - low) / 406_400);
}

// The side is 7 in wide and tapers to 5 in at its top; the dado of an earlier step ends 2 1/8 in from the edge (the plan).
test("the taper of a side has the figure of its own end, and none of the dado that was cut before", () => {
  const told = across("old-plans/wall-shelf", "Shape the left side (C)").map((each) => Math.round(each * 64) / 64);
  expect(told.toSorted((a, b) => a - b)).toEqual([0, 2, 7]);
});
