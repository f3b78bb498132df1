import { expect, test } from "vitest";
import { partInStep } from "../../../src/render/pages/drawn-part.ts";
import type { Plan } from "../../../src/render/pages/plan.ts";
import type { Build } from "../../../src/solve/build.ts";
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
