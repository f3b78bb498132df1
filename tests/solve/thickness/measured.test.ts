import { expect, test } from "vitest";
import type { Finding } from "../../../src/findings/finding.ts";
import { inches, millimetres, rational } from "../../../src/units/index.ts";
import { auditOf, recordOf, said, solveText } from "../../examples/compiled.ts";
import { seedCase } from "./plans.ts";

const solved = (measured: Record<string, string>) => solveText(seedCase(), {}, {}, measured);
/** All but advice. */
const doubts = (findings: readonly Finding[]) => said(findings.filter(({ severity }) => severity !== "advice"));

const shelf = (measured: Record<string, string>) => {
  const { build, findings } = solved(measured);
  const line = build?.cutList.find(({ parts }) => parts.includes("shelf"));
  if (!line) throw new Error(said(findings).join("\n"));
  return line;
};

test.each([
  ["0.703", rational(703 * 406_400, 1000)],
  ["45/64", inches(45, 64)],
  ["17.9 mm", millimetres(179, 10)],
  ["7.03 for 10", rational(703 * 406_400, 1000)],
  ["7 1/32 for 10", inches(225, 320)],
])("ply that measures %s is as thick as that", (text, thickness) => {
  expect(shelf({ ply: text }).thickness).toEqual(thickness);
});

// Drawn for 23/32 it is 30 − 2 × 23/32 + 2 × 1/4 = 29 1/16 long; at 45/64: 30 − 2 × 45/64 + 1/2 = 29 3/32, to the nearest 1/16 of the
// body (28 19/32, half up: 28 5/8) 29 1/8.
test("the sizes follow", () => {
  expect(shelf({}).length).toEqual(inches(465, 16));
  expect(shelf({ ply: "11/16" }).length).toEqual(inches(233, 8));
});

test("the reader's copy keeps the promises of its record, and says what was measured", () => {
  const { build, findings } = solved({ ply: "0.703" });
  expect(doubts(findings)).toEqual([]);
  if (!build) throw new Error("no build");
  expect(auditOf(seedCase(), build)).toEqual([]);
  // 0.703 × 25.4
  expect(JSON.parse(recordOf(seedCase(), build)).source.measured).toEqual({ ply: 17.8562 });
  expect(JSON.parse(recordOf(seedCase(), solved({}).build ?? build)).source.measured).toEqual({});
});

test("a sheet may well be measured at its name, and outside of the range", () => {
  expect(doubts(solved({ ply: "3/4" }).findings)).toEqual([]);
  expect(doubts(solved({ ply: "0.76" }).findings)).toEqual([]);
});

test.each([
  ["an unknown stock", { plywood: "0.7" }, "measured-stock-unknown"],
  ["what is no measure", { ply: "thick" }, "unknown-name"],
  ["what cannot be read", { ply: "3/" }, "measure-not-read"],
  ["less than nothing", { ply: "-1/2" }, "stock-size-not-positive"],
  ["a name that every object has", { constructor: "0.7" }, "measured-stock-unknown"],
])("%s is told", (_, measured, rule) => {
  const { build, findings } = solved(measured as Record<string, string>);
  expect(build).toBeUndefined();
  expect(findings.map((finding) => finding.rule)).toContain(rule);
});
