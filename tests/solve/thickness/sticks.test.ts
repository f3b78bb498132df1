import { expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "../told/examples.ts";

/** Between the rails, each 90 wide, the lower one 180 up, are the legs less 360: at every thickness of the top, of which the legs end below. */
test("sticks between two rails stand in the table, 360 shorter than the legs", () => {
  const build = built("workbench-cart");
  const [changing] = build.changing ?? [];
  const step = stepWith(build, /^Glue up the back upper rail/u);
  expect(changing?.sticks.map((each) => each.step)).toEqual([step.number]);
  const [{ sizes = [] } = {}] = changing?.sticks ?? [];
  const legs = changing?.rows.find(({ size }) => size === "length")?.sizes ?? [];
  expect(sizes.map(toMillimetres)).toEqual(legs.map((leg) => toMillimetres(leg) - 360));
  expect(new Set(sizes.map(toMillimetres)).size).toBeGreaterThan(1);
  expect(textOfStep(step)).toContain("take their length from the sizes that change with it");
});
