import { expect, test } from "vitest";
import { partInStep } from "../../../src/render/pages/drawn-part.ts";
import { asTold } from "../../../src/render/pages/places-told.ts";
import type { Plan } from "../../../src/render/pages/plan.ts";
import type { Build } from "../../../src/solve/build.ts";
import { extent, indexOf } from "../../../src/solve/design/space.ts";
import { inches } from "../../../src/units/length.ts";
import { solveText, textOf } from "../../examples/compiled.ts";

test("a step that works on a part and its mirror image draws the part with its measures; on two parts that only look alike, neither", () => {
  const { build } = solveText(textOf("loan-desk"));
  if (!build) throw new Error("does not compile");
  const markOf = new Map(build.parts.map(({ id, mark }) => [id, mark]));
  const step = build.steps.find(({ actions }) => {
    const marks = actions.map((action) => (action.do === "machine" ? markOf.get(action.part) : ""));
    return marks.includes("A") && marks.includes("B");
  });
  if (!step) throw new Error("no step works on both");
  expect(build.cutList.find(({ mark }) => mark === "B")?.mirrorOf).toBe("A");
  expect(partInStep({ build } as Plan, step)?.part.mark).toBe("A");
  const alone: Build = { ...build, cutList: build.cutList.map((line) => ({ ...line, mirrorOf: null })) };
  expect(partInStep({ build: alone } as Plan, step)).toBeNull();
});

test("a drawing has the measures that the cut list and the steps tell", () => {
  const tellerOf = (name: string, mark: string) => {
    const { build } = solveText(textOf(name));
    const part = build?.parts.find((each) => each.mark === mark);
    const line = build?.cutList.find((each) => each.mark === mark);
    if (!build || !part || !line) throw new Error(`no ${mark} in ${name}`);
    return { told: asTold(build, part, line), part, line };
  };
  // Legs that lean come out between two marks: the list says 29 3/8, and so does the drawing.
  const leg = tellerOf("loan-desk", "A");
  const long = extent(leg.part.blank, indexOf(leg.part.axes.length));
  expect(leg.told(long)).toEqual(leg.line.length);
  expect(leg.line.length).toEqual(inches(235, 8));
  // A front 6 25/32 high has its knob in the middle, 3 25/64 up, as the step says.
  const front = tellerOf("overalls-chest", "M");
  expect(front.told(inches(217, 64))).toEqual(inches(217, 64));
  // Nothing is bored 3 27/64 from an edge: what else lies there is as exact as a fine rule.
  expect(front.told(inches(219, 64))).toEqual(inches(219, 64));
});
