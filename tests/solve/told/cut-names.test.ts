/** Cuts are called by what they are for, and what is closed all round is no dado. Common practice, no source. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { said, solveText, textOf } from "../../examples/compiled.ts";

const linesOf = (text: string): readonly string[] => {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  return build.steps.flatMap((step) => step.text);
};

test("what is cut for the leaves of hinges is told as their seats, and fitted to the leaf in the hand", () => {
  const lines = linesOf(readFileSync(new URL("../design/plans/inset-door.yaml", import.meta.url), "utf8"));
  expect(lines.some((line) => /^Cut \w+ seats for hinge leaves /u.test(line))).toBe(true);
  expect(lines.some((line) => line.startsWith("Mark each round the leaf"))).toBe(true);
});

test("a housing that is closed on all four sides is a shallow mortise, with word of its round ends", () => {
  const lines = linesOf(textOf("old-plans/plant-stand"));
  expect(lines.some((line) => line.startsWith("Cut three shallow mortises "))).toBe(true);
  expect(lines.some((line) => line.startsWith("Where a router cuts, square the round ends"))).toBe(true);
});

test("a recess that breaks out says through which face: the boring is wider than what is left beside it", () => {
  const lines = linesOf(textOf("workbench-cart"));
  expect(
    lines
      .filter((line) => /^Bore \w+ recesses?, /u.test(line))
      .every((line) => /open to the (?:left|right|front|back),/u.test(line)),
  ).toBe(true);
});
