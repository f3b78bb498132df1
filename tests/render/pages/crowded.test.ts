import { expect, test } from "vitest";
import { gainOf, isFull } from "../../../src/render/pages/crowded.ts";
import { stepPictures } from "../../../src/render/pages/pictures.ts";
import { makePlan } from "../../../src/render/pages/plan.ts";
import { built } from "../../examples/compiled.ts";

const build = built("loan-desk");
const at = build.steps.findIndex(({ title }) => title.startsWith("Add the panel (E)"));
const step = build.steps[at];
if (!step) throw new Error("no step puts the panel on");

test("a step that drives sixteen screws is crowded, and one that drives none is not", () => {
  expect(step.shows.fasteners).toHaveLength(16);
  expect(isFull(build, step)).toBe(true);
  expect(isFull(build, { ...step, shows: { ...step.shows, fasteners: [] } })).toBe(false);
});

// By hand: twice as large shows four times as much, so that three quarters of it are gained; 1.2 times is not worth it.
test("what is gained is the share of the area", () => {
  expect(gainOf([{ larger: 1.5 }, { larger: 2 }])).toBe(3 / 4);
  expect(gainOf([{ larger: 1.2 }])).toBe(0);
  expect(gainOf([])).toBe(0);
});

test("a picture with something shown close beside it is drawn in a wider frame with the same", () => {
  const frame = { x: 0, y: 0, width: 510, height: 648 };
  const picture = stepPictures(makePlan(build, frame), { width: 243, height: 180 }, 288)[at];
  expect(picture?.wide({ width: 510, height: 250 })?.larger).toBeGreaterThan(1.15);
});
