import { describe, expect, test } from "vitest";
import { buttonCut, seatsOf } from "../../../src/render/drawing/step/button-cut.ts";
import { besideYet } from "../../../src/render/drawing/step/goings.ts";
import { ceilingOf, sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { stepPicture } from "../../../src/render/drawing/step/step-picture.ts";
import { built } from "../../examples/compiled.ts";

const PEN = { measure: (text: string, _: unknown, size: number) => text.length * size * 0.5, print: String } as never;

describe("a top that is taken off while the work lies on it", () => {
  const build = built("loan-desk");
  const step = build.steps.find(({ title }) => title.startsWith("Take off"));
  if (!step) throw new Error("nothing is taken off");

  test("the arrow is that of the rest, and points up the page", () => {
    const [arrow, ...others] = sceneOf(build, step).groups;
    expect(others).toEqual([]);
    expect(ceilingOf(step)).toEqual([0, 0, -1]);
    expect(arrow?.along.map((c) => c + 0)).toEqual([0, 0, -1]);
    const top = step.actions.flatMap((action) => (action.do === "remove" ? action.parts : []));
    expect(top.length).toBeGreaterThan(0);
    expect(arrow?.parts.filter((id) => top.includes(id))).toEqual([]);
  });

  test("what is laid on again comes from above", () => {
    const again = build.steps.find(({ title }) => title.endsWith("on again"));
    if (!again) throw new Error("nothing is put on again");
    expect(sceneOf(build, again).groups.map(({ along, leaves }) => [...along, leaves])).toEqual([[0, 0, -1, false]]);
  });

  test("a button is shown cut in the step that first drives its screws, and once", () => {
    const driving = build.steps.find(({ shows }) => shows.fasteners.some((id) => hasButton(id)));
    if (!driving) throw new Error("no button is screwed on");
    const options = { frame: { x: 0, y: 0, width: 270, height: 180 }, pen: PEN };
    const shown = stepPicture(build, driving, options);
    expect(shown.alt).toContain("cut along its tongue");
    expect(stepPicture(build, driving, { ...options, told: new Set([shown.close ?? ""]) }).alt).not.toContain(
      "cut along",
    );
    // Upright from the panel to the rail it lies as it is placed: its tongue in the rail.
    const [seat] = seatsOf(build, sceneOf(build, driving));
    const rail = build.parts.find(({ id }) => id === seat?.rail);
    expect(rail?.features.some(({ kind }) => kind === "groove")).toBe(true);
    expect(buttonCut(build, [], ceilingOf(driving), {} as never, PEN)).toBeNull();
  });

  const hasButton = (id: string): boolean =>
    build.fasteners.some((each) => each.id === id && each.button !== undefined);
});

test("what is finished with the rest and built in later is drawn off it, on the way that it is put together", () => {
  const build = built("dining-bench");
  const step = build.steps.find(({ title }) => title.startsWith("Finish all"));
  if (!step) throw new Error("the bench has no step that finishes all");
  expect(besideYet(build, step)?.map((c) => c + 0)).toEqual([0, 0, 1]);
  const { shifts, groups } = sceneOf(build, step);
  expect(groups).toEqual([]);
  for (const id of step.shows.fresh) expect(shifts.get(id)?.[2]).toBeGreaterThan(0);
  const joined = build.steps.find(({ number }) => number === step.number + 1);
  expect(joined && besideYet(build, joined)).toBeNull();
});
