import { expect, test } from "vitest";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { inTurns } from "../../../src/render/drawing/step/turns.ts";
import { built } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { words } from "./look.ts";

const stepOf = (name: string) => {
  const build = built(name);
  const step = build.steps.find(({ kind }) => kind === "take-off");
  if (!step) throw new Error(`nothing is taken off ${name}`);
  return { build, step };
};
const frame = { x: 0, y: 0, width: 250, height: 288 };

test("what is unscrewed last is still on in the first picture, and the drawers are gone in the second", () => {
  const { build, step } = stepOf("overalls-chest");
  const [first, last] = inTurns(step)?.map((each) => sceneOf(build, each)) ?? [];
  expect(first?.items.some(({ id }) => id === "lid.slab")).toBe(true);
  expect(first?.shifts.get("lid.slab") ?? [0, 0, 0]).toEqual([0, 0, 0]);
  expect(first?.groups.map(({ along }) => along.map((c) => c + 0))).toEqual([[0, -1, 0]]);
  expect(last?.shifts.get("lid.slab")?.[2]).toBeGreaterThan(0);
  expect(last?.items.filter(({ id }) => id.includes("overalls-drawer"))).toEqual([]);
  const { items, alt } = stepPicture(build, step, { frame, pen });
  expect(words(items)).toEqual(expect.arrayContaining(["Comes off first", "Comes off last"]));
  expect(alt).toContain("A second picture shows the end of it");
});

test("what all comes off alike is shown in one picture", () => {
  expect(inTurns(stepOf("index-cabinet").step)).toBeNull();
  expect(inTurns(stepOf("loan-desk").step)).toBeNull();
});
