import { expect, test } from "vitest";
import { productKind, smoulders } from "../../../src/solve/build/finishing/products.ts";
import { said, solveText, textOf } from "../../examples/compiled.ts";

/** An example with another finish than its own, or with none. */
const finished = (name: string, finish: string | null): string =>
  `${textOf(name).replace(/^finish:.*\n(?:[ \t]+.*\n)*/mu, "")}\n${finish === null ? "" : `finish: ${finish}\n`}`;

function scheduleOf(name: string, finish: string) {
  const { build, findings } = solveText(finished(name, finish));
  if (!build) throw new Error(said(findings).join("\n"));
  return { build, schedule: build.finishSchedule };
}

test("products are told apart by what their names say", () => {
  const kinds = ["milk paint", "shellac", "hard wax oil", "tung oil", "paste wax", "polyurethane"];
  expect(kinds.map((each) => productKind(each).kind)).toEqual(["paint", "shellac", "wax oil", "oil", "wax", "varnish"]);
  expect(["danish oil", "latex paint", "polyurethane"].map(smoulders)).toEqual([true, false, true]);
});

test("a row for each surface, with its parts, coats and what it takes", () => {
  const { build, schedule } = scheduleOf(
    "dining-bench",
    "{ seat: { with: hard wax oil, coats: 3 }, everything else: { with: water-based varnish, covers: 10 m2 per litre } }",
  );
  const [seat, rest] = schedule?.rows ?? [];
  expect(seat?.coats).toBe(3);
  expect([...(seat?.marks ?? []), ...(rest?.marks ?? [])].toSorted()).toEqual(
    build.cutList.map(({ mark }) => mark).toSorted(),
  );
  expect([seat?.recoat, rest?.between]).toEqual([12, 320]);
  // area × 2 coats / 10 m² a litre, a tenth over, in US fluid ounces of 29.5735 ml, rounded up.
  const ounces = Math.ceil((((rest?.area ?? 0) * 2) / 10) * 1.1 * (1000 / 29.5735));
  expect(rest?.amount).toBe(`${ounces} oz`);
  const how = schedule?.how.join(" ") ?? "";
  expect(how).toContain("raises the grain");
  expect(how).toContain("Both faces of a glued-up panel");
  expect(how).not.toContain("floats");
});

test("panels, hinges and slides are kept free; a bench has none", () => {
  const free = (name: string) => (solveText(textOf(name)).build?.finishSchedule?.free ?? []).join("; ");
  expect(free("index-cabinet")).toMatch(/glued.*grooves that panels float in.*cups of hinges.*slides/u);
  // Hinges of the closet are let in, those of the key cabinet are not; the desk's top is held by buttons, and floats in no groove.
  expect(free("old-plans/china-closet")).toMatch(/seats of hinges/u);
  expect(free("key-cabinet")).not.toMatch(/hinges/u);
  expect(free("loan-desk")).not.toMatch(/float/u);
  expect(free("boot-bench")).not.toMatch(/hinges|slides|float/u);
});

test("nothing is said of finish where the plan says nothing", () => {
  expect(solveText(finished("boot-bench", null)).build?.finishSchedule).toBeUndefined();
});
