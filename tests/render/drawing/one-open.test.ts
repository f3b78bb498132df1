import { expect, test } from "vitest";
import type { Vec } from "../../../src/geometry/types.ts";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { oneOpen } from "../../../src/render/drawing/step/one-open.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { words } from "./look.ts";

const { build } = solveText(textOf("overalls-chest"));
if (!build) throw new Error("the chest compiles");
const stepCalled = (title: string) => {
  const step = build.steps.find((each) => each.title === title);
  if (!step) throw new Error(`the chest has no step: ${title}`);
  return step;
};
const frame = { x: 0, y: 0, width: 250, height: 180 };

test.each(["Put in the five overalls drawers", "Put the five overalls drawers on again"])(
  "one drawer is drawn out, the lowest, and the others are shut: %s",
  (title) => {
    const { items, shifts } = sceneOf(build, stepCalled(title));
    const lows = items.flatMap(({ id, solid }) => (id.endsWith("box-front") ? [{ id, low: solid.low[2] }] : []));
    expect(lows).toHaveLength(5);
    const out = lows.filter(({ id }) => (shifts.get(id)?.[1] ?? 0) < 0);
    expect(out.map(({ low }) => low)).toEqual([Math.min(...lows.map(({ low }) => low))]);
  },
);

test("drawers of two sides go their own ways, and what is no drawer is left as it is", () => {
  const [first, second] = build.motions.filter(({ kind }) => kind === "slide");
  const boxOf = (of: typeof first) => build.parts.map(({ id }) => id).filter((id) => of?.moves.includes(id));
  const going = (parts: readonly string[], along: Vec) => ({ parts, along });
  const two = [going(boxOf(first), [0, 1, 0]), going(boxOf(second), [0, -1, 0])];
  expect(oneOpen(build, two)).toEqual(two);
  const case_ = build.parts.filter(({ id }) => id.startsWith("chest.left-side"));
  const others = case_.map(({ id }) => going([id], [0, 1, 0]));
  expect(others.length).toBeGreaterThan(1);
  expect(oneOpen(build, others)).toEqual(others);
});

test("what is bought is counted as often as it is put on, also where not all of it is drawn", () => {
  const { items } = stepPicture(build, stepCalled("Fit the knobs"), { frame, pen });
  expect(words(items).filter((text) => text.startsWith("knob"))).toEqual(["knob × 5"]);
});
