import { describe, expect, test } from "vitest";
import { named, number, partWith, planWith, rulesOf } from "./helpers.ts";

describe("shapes", () => {
  test.each([
    [
      "taper: { faces: [left, front], at: bottom, to: 1, over: 2 }",
      { shape: "taper", faces: ["left", "front"], end: { value: "bottom" }, to: number(1), over: number(2) },
    ],
    [
      "chamfer: { along: top front, by: 1/8 }",
      { shape: "chamfer", along: { faces: ["top", "front"] }, by: number(1, 8) },
    ],
    [
      "bevel: { along: top front, wide: 1, deep: 1/4 }",
      { shape: "bevel", along: { faces: ["top", "front"] }, wide: number(1), deep: number(1, 4) },
    ],
    [
      "notch: { at: left front, wide: 1, deep: 2 }",
      { shape: "notch", along: { faces: ["left", "front"] }, wide: number(1), deep: number(2) },
    ],
    [
      "rebate: { along: back top, width: 1/4, depth: 1/2 }",
      { shape: "rabbet", along: { faces: ["back", "top"] }, wide: number(1, 4), deep: number(1, 2) },
    ],
    [
      "groove: { in: back, near: bottom, in from: 1/2, wide: 1/4, deep: 3/8, from: left + 1, to: right - 1 }",
      {
        shape: "groove",
        in: "back",
        near: "bottom",
        inFrom: number(1, 2),
        wide: number(1, 4),
        deep: number(3, 8),
        from: { kind: "operation", operator: "+", left: named("left"), right: number(1) },
        to: { kind: "operation", operator: "-", left: named("right"), right: number(1) },
      },
    ],
    ["housing: { in: left, near: top, in from: 3, wide: 1, deep: 1/4 }", { shape: "dado", in: "left", near: "top" }],
    ["mortice: { in: left, near: top, in from: 3, wide: 1, deep: 1/4 }", { shape: "mortise" }],
    [
      "tenon: { on: left, long: 1, thick: 1/4, wide: 2 }",
      { shape: "tenon", on: "left", long: number(1), thick: number(1, 4), wide: number(2) },
    ],
    [
      "hole: { in: top, from right: 2, from front: 3, diameter: 3/8, deep: 1/2, counterbore: { diameter: 1, deep: 1/4 } }",
      {
        shape: "hole",
        in: "top",
        centre: [
          { from: "right", distance: number(2) },
          { from: "front", distance: number(3) },
        ],
        diameter: number(3, 8),
        deep: number(1, 2),
        counterbore: { diameter: number(1), deep: number(1, 4) },
      },
    ],
  ])("%s", (lines, shape) => {
    expect(partWith(lines)).toMatchObject({ shapes: [shape] });
  });

  test("a hole right through has no depth, said or not", () => {
    for (const deep of ["", ", deep: through"]) {
      const part = partWith(`hole: { in: top, from left: 2, from front: 3, diameter: 3/8${deep} }`);
      expect(Object.keys((part as { shapes: object[] }).shapes[0] ?? {})).not.toContain("deep");
    }
  });

  test("a list gives several", () => {
    const part = partWith(
      "notch:\n  - { at: left front, wide: 1, deep: 2 }\n  - { at: right front, wide: 1, deep: 2 }",
    );
    expect(part).toMatchObject({
      shapes: [{ shape: "notch" }, { shape: "notch", along: { faces: ["right", "front"] } }],
    });
  });

  test.each([
    ["chamfer: { along: top bottom, by: 1/8 }", "wrong-value"],
    ["chamfer: { along: top, by: 1/8 }", "wrong-value"],
    ["hole: { in: top, from left: 2, diameter: 1 }", "missing-key"],
    ["hole: { in: top, from left: 2, from bottom: 2, diameter: 1 }", "missing-key"],
    ["taper: { faces: inside, at: bottom, to: 1, over: 2 }", "unknown-word"],
    ["tenon: 3", "wrong-value"],
    ["round-over: 1/8", "wrong-value"],
  ])("%s is told: %s", (lines, rule) => {
    expect(rulesOf(planWith({ piece: `shelf:\n  made of: pine\n  ${lines}` }))).toEqual([rule]);
  });
});
