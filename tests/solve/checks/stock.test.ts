import { describe, expect, test } from "vitest";
import { stepExample } from "../../../src/findings/example.ts";
import { judge } from "./plan.ts";

const lumber = (said: string): string => stepExample(["{ sold as: 2x4, wood: spruce }", `{ ${said} }`]);
const INCH = 25.4;

describe("what is left to plane", () => {
  test.each([
    ["sold as: 2x4, wood: spruce, planed to: { thick: 1 1/2, wide: 3 1/2 }", "nothing-left-to-flatten", 0, "warns"],
    [
      "sold as: 2x4, wood: spruce, planed to: { thick: 1 15/32, wide: 3 1/2 }",
      "nothing-left-to-flatten",
      1 / 32,
      "warns",
    ],
    [
      "sold as: 2x4, wood: spruce, planed to: { thick: 1 7/16, wide: 3 1/2 }",
      "nothing-left-to-flatten",
      1 / 16,
      "holds",
    ],
    ["sold as: 8/4, wood: cherry, planed to: { thick: 2, wide: 3 1/2 }", "nothing-left-to-flatten", 0, "warns"],
    ["sold as: 8/4, wood: cherry, planed to: { thick: 1 15/16, wide: 3 1/2 }", "little-left-to-plane", 1 / 16, "warns"],
    ["sold as: 8/4, wood: cherry, planed to: { thick: 1 7/8, wide: 3 1/2 }", "little-left-to-plane", 1 / 8, "holds"],
  ])("%s", (said, rule, left, verdict) => {
    const { of, told } = judge(lumber(said));
    expect(of(rule, "lumber")).toMatchObject({ verdict });
    expect(of(rule, "lumber")?.value).toBeCloseTo(left * INCH, 9);
    expect(told(rule)).toHaveLength(verdict === "warns" ? 1 : 0);
  });

  test("what is not planed is not judged", () => {
    expect(judge(lumber("sold as: 2x4, wood: spruce")).of("nothing-left-to-flatten", "lumber")).toBe(undefined);
  });
});

describe("wet lumber", () => {
  test.each([
    ["19 %", "", "warns", 10],
    ["10 %", "", "holds", 10],
    ["12 %", "place: damp coast\n", "holds", 13],
    ["10 %", "place: dry desert\n", "warns", 9],
    ["14 %", "place: unheated porch\n", "holds", 14],
  ])("%s %s", (moisture, place, verdict, limit) => {
    const text = lumber(`sold as: 2x4, wood: spruce, moisture: ${moisture}`).replace("stock:", `${place}stock:`);
    expect(judge(text).of("wet-lumber", "lumber")).toMatchObject({ verdict, limit, unit: "%" });
  });
  test("says what a part will lose: 3 1/2 in of spruce × 0.00274 × 13 = 1/8 in", () => {
    const [finding] = judge(lumber("sold as: 2x4, wood: spruce, moisture: 19 %")).told("wet-lumber");
    expect(finding?.why).toContain("3 1/2 in wide will be about 1/8 in narrower");
  });
  test("where nothing is said, nothing is judged", () => {
    expect(judge(lumber("sold as: 2x4, wood: spruce")).of("wet-lumber", "lumber")).toBe(undefined);
  });
});

describe("sheets", () => {
  const LID =
    "  lid: { made of: panel, as: lying flat, grain: across, left: 4, right: 16, front: 0, back: 3 1/2, under: tread }";
  const sheet = (measures: string): string =>
    stepExample(
      ["stock:", `stock:\n  panel: { sold as: 3/4 birch plywood, measures: ${measures} }`],
      ["  right-leg:", `${LID}\n  right-leg:`],
      ["joints:", "joints:\n  - { join: lid, to: tread, with: glue }"],
    );
  test.each([
    ["3/4", "warns", 1],
    ["23/32", "holds", 0],
    ["3/4, between: 11/16 and 3/4", "holds", 0],
  ])("%s", (measures, verdict, told) => {
    const judged = judge(sheet(measures));
    expect(judged.of("nobody-sells-that-thickness", "panel")).toMatchObject({ verdict });
    expect(judged.told("nobody-sells-that-thickness")).toHaveLength(told);
  });
});

describe("bits", () => {
  const rail = (thick: string, tools = ""): string =>
    stepExample(
      [
        "  right-leg:",
        "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\n  right-leg:",
      ],
      [
        "joints:",
        `${tools}joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon, tenon: { thick: ${thick} } }`,
      ],
    );
  const OWNED = "tools owned: { mortise bits: [1/4, 1/2] }\n";
  test.each([
    ["1/2", "", "holds"],
    ["0.45", "", "warns"],
    ["1 1/4", "", "holds"],
    ["3/8", "", "holds"],
    ["3/8", OWNED, "warns"],
    ["1/2", OWNED, "holds"],
  ])("a tenon %s thick %s", (thick, tools, verdict) => {
    const { of, told } = judge(rail(thick, tools));
    expect(of("cutter-does-not-exist", "left-leg")).toMatchObject({ verdict });
    expect(told("cutter-does-not-exist")).toHaveLength(verdict === "warns" ? 2 : 0);
  });
  test("the nearest narrower and wider are named", () => {
    expect(judge(rail("3/8", OWNED)).told("cutter-does-not-exist")[0]?.help).toBe(
      "make the tenon 1/4 in or 1/2 in thick",
    );
  });
});
