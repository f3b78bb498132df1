/** Nails and screws of two joints in one part; places by hand from the plan in the text. */
import { expect, test } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";

const CHEST = textOf("old-plans/cedar-chest");
const met = (text: string): number => solveText(text).findings.filter(({ rule }) => rule === "fasteners-meet").length;

// The nails of the ends lie 1 1/2 in above the bottom, those of the bottom come 1 1/8 in up: 1 in above it they cross.
test("nails that come up from below are told where others cross their way", () => {
  expect(met(CHEST)).toBe(0);
  expect(met(CHEST.replaceAll("count: 5, in from ends: 1 1/2 }", "count: 5, in from ends: 1 }"))).toBeGreaterThan(0);
});
