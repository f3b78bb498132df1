import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { finishNeeds } from "../../../src/solve/build/purchases/finish.ts";
import { bought } from "../../../src/solve/build/purchases/need.ts";
import { solveText } from "../../examples/compiled.ts";
import { parseText, planWith } from "../../parse/helpers.ts";

const BENCH = readFileSync("examples/boot-bench.yaml", "utf8").replace(/^finish:.*$/mu, "");
const withFinish = (finish: string) => solveText(`${BENCH}\nfinish: ${finish}\n`);

test("coverage is read in either system", () => {
  const covers = (text: string) =>
    parseText(planWith({ top: `finish: { with: oil, covers: ${text} }` })).value?.finish?.[0]?.covers;
  expect(covers("12 m2 per litre")).toBe(12);
  expect(covers("12 m²/l")).toBe(12);
  // A square foot is 0.09290304 m², a US gallon 3.785411784 l: 400 × 0.09290304 / 3.785411784.
  expect(covers("400 sq ft per gallon")).toBeCloseTo(9.817, 3);
  expect(covers("100 sq ft per quart")).toBeCloseTo(9.817, 3);
  for (const wrong of ["12", "12 m2", "0 m2 per litre", "12 m2 per acre", "9000 m2 per litre"])
    expect(parseText(planWith({ top: `finish: { with: oil, covers: ${wrong} }` })).findings[0]?.rule, wrong).toBe(
      "wrong-value",
    );
});

test("as much is bought as the area takes in all its coats, a tenth over, in one can where one holds it", () => {
  const finishing = [{ surface: "the whole piece", parts: [], product: "varnish", coats: 2, covers: 12, area: 10 }];
  const lines = (units: "inch" | "mm") => finishNeeds(finishing, units).map((need) => bought(need, undefined));
  // 10 × 2 / 12 × 1.1 = 1.833 l, which is 62 US fluid ounces of 29.574 ml.
  expect(lines("inch")).toMatchObject([
    { item: "varnish", quantity: 1, unit: "gallon can", note: "about 62 oz for 2 coats on the whole piece" },
  ]);
  expect(lines("mm")).toMatchObject([{ quantity: 1, unit: "2500 ml can" }]);
});

test("each part has one finish: that which names it, else that of everything else", () => {
  const { build, findings } = withFinish(
    "{ seat-slat: { with: hard wax oil, coats: 3 }, everything else: { with: milk paint } }",
  );
  expect(findings).toEqual([]);
  const [seat, rest] = build?.finishing ?? [];
  expect([seat?.parts.length, seat?.coats, rest?.coats]).toEqual([4, 3, 2]);
  expect(rest?.parts.length).toBe((build?.parts.length ?? 0) - 4);
  // Four slats of 1 1/2 × 3 1/2 × 42 in have 1722 square inches, 1.111 m², less what lies on the rails:
  // 2 × 3 1/2 × 1 1/2 in each of the inner two, and half of that of the outer two, which lie half on legs that they are not joined to.
  expect(seat?.area).toBeCloseTo((1722 - 31.5) * 0.0254 * 0.0254, 3);
  const items = build?.purchases.map(({ item }) => item);
  expect(items).toContain("hard wax oil");
  expect(items).toContain("milk paint");
});

test("a part that there is not is told", () => {
  expect(withFinish("{ lid: { with: oil } }").findings.map(({ rule }) => rule)).toEqual(["unknown-name"]);
});
