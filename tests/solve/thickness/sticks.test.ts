import { expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "../told/examples.ts";

/** The top of three layers leaves 880 − 3t for the legs; between the rails are those less 90, 90 and 180. */
test("sticks between two rails stand in the table: 520 − 3t, to the millimetre", () => {
  const build = built("workbench-cart");
  const [changing] = build.changing ?? [];
  const step = stepWith(build, /^Glue up the back upper rail/u);
  expect(changing?.sticks.map((each) => each.step)).toEqual([step.number]);
  const [{ sizes = [] } = {}] = changing?.sticks ?? [];
  expect(changing?.thicknesses.map((t) => Math.round(520 - 3 * toMillimetres(t)))).toEqual(sizes.map(toMillimetres));
  expect(new Set(sizes.map(toMillimetres)).size).toBeGreaterThan(1);
  expect(textOfStep(step)).toContain("take their length from the sizes that change with it");
});
