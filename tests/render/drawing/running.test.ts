import { expect, test } from "vitest";
import { sceneOf } from "../../../src/render/drawing/step/scene.ts";
import { chooseView } from "../../../src/render/drawing/step/views.ts";
import { solveText, textOf } from "../../examples/compiled.ts";

test("drawers that run on wood stand before it, and are seen from above", () => {
  const { build } = solveText(textOf("old-plans/library-table"));
  for (const which of ["front", "back"]) {
    const step = build?.steps.find(({ title }) => title === `Put in the ${which} drawer`);
    if (!build || !step) throw new Error("the table has drawers");
    const { items, fresh } = sceneOf(build, step);
    const supports = items.filter(({ id }) => id.startsWith("supports."));
    const reach = Math.max(...supports.map(({ solid }) => solid.high[1]));
    const start = Math.min(...supports.map(({ solid }) => solid.low[1]));
    const drawer = items.filter(({ id }) => id.startsWith(`${which}-drawer.`));
    expect(drawer.length).toBeGreaterThan(4);
    for (const { solid, shift = [0, 0, 0] } of drawer) {
      if (which === "back") expect(solid.low[1] + shift[1]).toBeGreaterThan(reach);
      else expect(solid.high[1] + shift[1]).toBeLessThan(start);
    }
    expect(chooseView({ items, fresh, mouths: [] }, step.up, null).towards[2]).toBeGreaterThan(0);
  }
});
