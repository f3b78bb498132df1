import { expect, test } from "vitest";
import { keyOf } from "../../../src/render/pages/drawn-part.ts";
import type { Plan } from "../../../src/render/pages/plan.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/length.ts";

test("the legend calls what goes into a hole by the name that the steps use", () => {
  const plan = { build: { fasteners: [] }, printer: { drill: () => "3/8", exact: () => "", set: () => "1" } };
  const bored = (kind: Hole["kind"]) => {
    const stages = [{ diameter: inches(3, 8), depth: inches(1, 1) }];
    const hole = { kind, stages, through: false, for: "f" } as unknown as Hole;
    const [line] = keyOf(
      [{ letter: "b", holes: [hole], on: "face", side: "left face" }],
      plan as unknown as Pick<Plan, "build" | "printer">,
    );
    return typeof line === "string" ? line : line?.map(({ text }) => text).join("");
  };
  expect(bored("nut")).toBe("b: 1 hole, Ø 3/8, 1 deep, cross dowel, into its left face");
  expect(bored("dowel")).toContain(", dowel, into");
});
