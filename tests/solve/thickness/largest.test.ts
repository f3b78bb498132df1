import { expect, test } from "vitest";
import { inches } from "../../../src/units/length.ts";
import { auditOf, said, solveText } from "../../examples/compiled.ts";
import { seedCase } from "./plans.ts";

const solved = (text: string, measured: Record<string, string> = {}) => {
  const { build, findings } = solveText(text, {}, {}, measured);
  if (!build) throw new Error(said(findings).join("\n"));
  const blank = (part: string) => build.blanks.find((each) => each.part === part);
  const line = (part: string) => build.cutList.find(({ parts }) => parts.includes(part));
  return { build, blank, line };
};

// What stands between the sides is 30 − 2t long: drawn for 23/32 it is 28 9/16, with sheets of 11/16 28 5/8. With its dadoes the shelf is 1/2
// longer: 29 1/16, and 29 1/8.
test("layouts keep room for the largest size of each part, the cut list tells that as drawn", () => {
  const { build, blank, line } = solved(seedCase());
  expect(line("floor-panel")?.length).toEqual(inches(457, 16));
  expect(blank("floor-panel")).toMatchObject({ length: inches(115, 4), width: inches(97, 8), why: "cut later" });
  expect(blank("floor-panel")?.reserved).toEqual([
    { size: "length", largest: inches(229, 8), at: new Map([["ply", inches(11, 16)]]) },
  ]);
  expect(line("shelf")?.length).toEqual(inches(465, 16));
  expect(blank("shelf")?.length).toEqual(inches(233, 8));
  const placed = build.layouts.flatMap(({ placements }) => placements).find((p) => p.blank === blank("shelf")?.id);
  expect([placed?.width, placed?.length]).toContainEqual(inches(233, 8));
  expect(blank("left-side")).toMatchObject({ length: inches(20), width: inches(12), why: "as finished" });
  expect(auditOf(seedCase(), build)).toEqual([]);
});

test("the sawing tells the size of the cut list, and that more is kept", () => {
  const { build } = solved(seedCase());
  const text = build.steps.flatMap((step) => step.text).join(" ");
  expect(text).toMatch(/28\s9⁄16/);
  expect(text).not.toMatch(/28\s5⁄8/);
  expect(text).toContain("measure yours first");
});

test("once the sheet is measured nothing more is kept", () => {
  const { build } = solved(seedCase(), { ply: "11/16" });
  expect(build.blanks.every(({ why, reserved }) => why !== "largest" && reserved === undefined)).toBe(true);
});

// A part as long as the sheet is thick five times over grows with it: at 3/4 it is 3 3/4, drawn 3 19/32, to 1/16 3 9/16.
test("a part that grows with the sheet is kept for the thick end", () => {
  const text = seedCase().replace(
    "front: 1, back: 11, bottom: 10 }",
    "front: 1, deep: left-side.thickness * 5, bottom: 10 }",
  );
  const { blank } = solved(text);
  expect(blank("shelf")?.reserved).toEqual([
    { size: "width", largest: inches(15, 4), at: new Map([["ply", inches(3, 4)]]) },
    { size: "length", largest: inches(233, 8), at: new Map([["ply", inches(11, 16)]]) },
  ]);
});
