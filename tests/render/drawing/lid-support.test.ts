import { expect, test } from "vitest";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { METAL } from "../../../src/render/palette.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { paths, segmentsOf } from "./look.ts";

test("the arm of a lid support is drawn from its half on the chest to that on the open lid", () => {
  const { build } = solveText(textOf("old-plans/cedar-chest"));
  const step = build?.steps.find(({ title }) => title === "Fit the lid support");
  if (!build || !step) throw new Error("the chest has a lid support");
  const { items, arms, open } = sceneOf(build, step);
  expect(open).toHaveLength(1);
  const halves = items.filter(({ id }) =>
    build.hardware.some((each) => each.id === id && each.item.kind === "lid support"),
  );
  expect(halves).toHaveLength(2);
  expect(arms).toHaveLength(1);
  for (const end of arms[0] ?? [])
    expect(
      halves.some(({ solid: { low, high } }) => end.every((at, i) => at >= (low[i] ?? 0) && at <= (high[i] ?? 0))),
    ).toBe(true);
  const drawn = paths(stepPicture(build, step, { frame: { x: 0, y: 0, width: 243, height: 180 }, pen }).items).filter(
    ({ stroke }) => stroke?.ink === METAL.light,
  );
  expect(drawn.flatMap(segmentsOf).length).toBeGreaterThan(0);
});
