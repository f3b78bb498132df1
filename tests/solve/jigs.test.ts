import { describe, expect, it } from "vitest";
import { inches, toInches } from "../../src/units/length.ts";
import { auditOf, said, solveText, textOf } from "../examples/compiled.ts";

/** Two legs with a pull each, `up` below their tops. */
const plan = (second: string): string => `plan: 1
title: Step with two pulls
units: inch
stock:
  lumber: { sold as: 2x4, wood: spruce }
hardware:
  grip: { kind: pull, centres: 3, screw: 1 7/8 }
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: 24, front: 0, top: 12 }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: 24 }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
fittings:
  - { fit: grip, to: left-leg, face: left, up: left-leg.top - 3 }
  - { fit: grip, to: right-leg, face: right, up: right-leg.top - ${second} }
`;

describe("templates", () => {
  it("one sets out all that sit alike, its holes from the nearer edges", () => {
    const text = plan("3");
    const { build, findings } = solveText(text);
    if (!build) throw new Error(said(findings).join("\n"));
    expect(auditOf(text, build)).toEqual([]);
    const [jig] = build.jigs ?? [];
    // In the middle of 3 1/2; 3 less and more half of 3 below the top.
    expect(jig?.holes.map(({ x, y }) => [toInches(x), toInches(y)])).toEqual([
      [1.75, 1.5],
      [1.75, 4.5],
    ]);
    const at = (unit: string): number => build.steps.findIndex((step) => step.unit === unit);
    expect(at("jigs")).toBeGreaterThanOrEqual(0);
    expect(at("jigs")).toBeLessThan(at("fit pull"));
    const bored = build.steps.findIndex(({ actions }) => actions.some((action) => action.do === "machine"));
    expect(at("jigs")).toBeLessThan(bored);
  });
  it("a strip sets out rows of shelf pins, from the lower end of the sides", () => {
    const text = `plan: 1
title: Shelves
units: inch
outside: { width: 24, depth: 12, height: 36 }
stock:
  ply: { sold as: 3/4 MDF, measures: 3/4 }
piece:
  cabinet: { kind: case, made of: ply, join: dado, shelves: { loose: [14] } }
`;
    const { build, findings } = solveText(text);
    if (!build) throw new Error(said(findings).join("\n"));
    expect(auditOf(text, build)).toEqual([]);
    // One pattern for four rows: under the shelf at 14 + 3/4 − 3/4, half of 1/4 lower, and 1 1/4 from hole to hole.
    const strips = (build.jigs ?? []).map(({ holes }) => holes.map(({ y }) => toInches(y)));
    expect(strips).toEqual([[-2, -1, 0, 1, 2].map((i) => 14 - 1 / 8 + i * 1.25)]);
    const [step] = build.steps.filter(({ unit }) => unit === "jigs");
    // It hides the line that it lies on.
    expect(step?.text.join(" ")).toMatch(/down over both its ends\. .* farther than the strip reaches/u);
    expect(step?.text.join(" ").replaceAll("\u202f", " ").replaceAll("\u00a0", " ")).toContain(
      "at each place that its drawing has from the lower end",
    );
  });
  // Two of either: each template wants two fences, and four screws in them.
  it("each has its own fences, and the screws for them are bought", () => {
    const lower = ["left", "right"].map((side) => `  - { fit: grip, to: ${side}-leg, face: ${side}, up: 2 1/2 }`);
    const { build, findings } = solveText(`${plan("3")}${lower.join("\n")}\n`);
    if (!build) throw new Error(said(findings).join("\n"));
    expect(build.jigs).toHaveLength(2);
    const text = build.steps.find(({ unit }) => unit === "jigs")?.text.join("\n") ?? "";
    const [first = "", second = ""] = text.split(/^(?=Jig 2)/mu);
    expect(first).toContain("rip two strips");
    expect(second).toContain("two fences as for jig 1");
    // How both are laid on is said once.
    expect(text.split("Hold the fences against")).toHaveLength(2);
    const bought = build.purchases.find(({ item }) => item.includes("fences of jigs"));
    expect(bought?.quantity).toBe(8);
  });
  it("there is none for places that differ", () => {
    const { build } = solveText(plan("2 1/2"));
    expect(build?.jigs).toBeUndefined();
  });
});

// Common practice, no source.
it("jigs come from thin offcuts where there are some, not from the wood for legs", () => {
  const { build } = solveText(textOf("overalls-chest"));
  const stock = new Map(build?.design.stock.map((each) => [each.name, each]));
  const thick = build?.jigs?.map(({ from }) => toInches(stock.get(from ?? "")?.thickness ?? inches(9)));
  expect(thick?.length).toBeGreaterThan(1);
  expect(Math.max(...(thick ?? []))).toBeLessThan(0.8);
});

// Common practice, no source: a drill that is guided by a block passes the block before the wood.
it("a stop is set for the hole and the jig that guides the bit, wherever it is told", () => {
  const { build } = solveText(textOf("overalls-chest"));
  const strips = build?.jigs?.filter(({ laid }) => laid === "on the end") ?? [];
  expect(strips.length).toBeGreaterThan(0);
  for (const { id, uses, thickness } of strips) {
    expect(toInches(thickness ?? inches(0))).toBe(23 / 32);
    const rows = build?.drilling.filter(({ holes }) => holes.some((i) => uses.holes.includes(i))) ?? [];
    for (const { depth, jig, holes } of rows) {
      const deep = toInches(build?.holes[holes[0] ?? -1]?.stages[0]?.depth ?? inches(0));
      expect(jig?.id).toBe(id);
      expect(typeof depth === "string" ? depth : toInches(depth)).toBeCloseTo(deep + 23 / 32, 9);
    }
    const told = build?.steps.flatMap(({ text }) => text.filter((each) => each.includes(`Bore by ${id} `))) ?? [];
    expect(told.length).toBeGreaterThan(0);
    // 11/32 and 3/8, each with 23/32.
    for (const each of told) expect(each).toMatch(/set the stop 1.(?:1⁄16|3⁄32)\u202fin/u);
  }
});

it("a number of holes never stands before their diameter", () => {
  const { build } = solveText(textOf("overalls-chest"));
  const told = build?.steps.flatMap(({ text }) => text.filter((each) => each.startsWith("Bore "))) ?? [];
  expect(told.filter((each) => /^Bore \d+ \d/u.test(each))).toEqual([]);
  expect(told).toContain(
    "Bore 15 holes for the side slides, 3⁄32\u202fin across, into the right face, 3⁄8\u202fin deep.",
  );
});
