/** Cuts are called by what they are for, and what is closed all round is no dado. Common practice, no source. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { glued } from "../../../src/render/pages/gluing.ts";
import { said, solveText, textOf } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

const stepsOf = (text: string) => {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  return build.steps;
};
const linesOf = (text: string): readonly string[] => stepsOf(text).flatMap((step) => step.text);

test("what is cut for the leaves of hinges is told as their seats, and fitted to the leaf in the hand", () => {
  const lines = linesOf(readFileSync(new URL("../design/plans/inset-door.yaml", import.meta.url), "utf8"));
  expect(lines.some((line) => /^Cut \w+ seats for hinge leaves /u.test(line))).toBe(true);
  expect(lines.some((line) => line.startsWith("Mark each round the leaf"))).toBe(true);
});

test("a leaf that is let in for a part of its width is marked by how far it stands out, and the door is tried shut so far back", () => {
  const plan = readFileSync(new URL("../design/plans/inset-door.yaml", import.meta.url), "utf8");
  const told = (front: string): string => plain(linesOf(plan.replace("front: 0 }", `front: ${front} }`)).join(" "));
  expect(told("0")).not.toContain("Each leaf stands out");
  expect(told("0")).toContain("the front of the door (C) flush with that of the left side (A)");
  // On the side the leaf lies as wide as it is: 1/2 in. On the door it stands out by as much as that is set back.
  const back = told("1/8");
  expect(back).toContain("Mark each round the leaf");
  expect(back).toContain(
    "Each leaf stands out 1/8 in past the front face here, the knuckle outside: it hangs so far back.",
  );
  expect(back).toContain("the front of the door (C) set back 1/8 in from that of the left side (A)");
});

test("a housing that is closed on all four sides along the grain is a mortise where it is deep, with word of its round ends", () => {
  const lines = linesOf(textOf("old-plans/plant-stand"));
  expect(lines.some((line) => line.startsWith("Cut three mortises 2"))).toBe(true);
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

test("cuts that end in the wood are told to be squared, once for all of a kind; what runs out at both ends is not", () => {
  const steps = stepsOf(textOf("old-plans/wall-shelf"));
  const side = steps.find(({ title }) => plain(title) === "Cut the joints in the left side (C)");
  const told = (side?.text ?? []).map(plain);
  const squared = told.flatMap((line, i) => (line.startsWith("Where a router cuts, square the round ends") ? [i] : []));
  expect(squared.map((i) => told[i - 1]?.split(" in long")[0])).toEqual([
    "Cut a stopped dado 4 1/2",
    "Cut a rabbet 2 3/4",
  ]);
  // The rabbets in the top of this case run from end to end, its dado from the front into the rabbet at the back.
  const top = stepsOf(textOf("manuals-bookcase")).find(({ title }) =>
    plain(title).startsWith("Cut the joints in the top"),
  );
  const lines = (top?.text ?? []).map(plain);
  expect(lines.some((line) => line.startsWith("Cut a dado 11 1/32 in long"))).toBe(true);
  expect(lines.join(" ")).not.toContain("square the round ends");
});

test("an edge in which the leaves of hinges lie stays square there", () => {
  const plan = readFileSync(new URL("../design/plans/inset-door.yaml", import.meta.url), "utf8");
  const rounded = (along: string): string =>
    plain(linesOf(plan.replace("front: 0 }", `front: 0, round-over: { along: ${along}, radius: 1/8 } }`)).join(" "));
  expect(rounded("left front")).toContain("Leave the edge square along each seat for a hinge leaf");
  expect(rounded("right front")).not.toContain("Leave the edge square");
});

// A rabbet has one shoulder, a dado two. Common practice, no source.
test("what lies at the end of its part and was asked for as a dado is a rabbet in steps, cut list and table of glue-ups", () => {
  const { build } = solveText(textOf("index-cabinet"));
  const side = build?.steps.find(({ title }) => title.includes("the cabinet left side"));
  const told = (side?.text ?? []).map(plain);
  expect(told.some((line) => line.startsWith("Cut a rabbet 14 1/2 in long, 23/32 in wide"))).toBe(true);
  expect(told.filter((line) => /dado.*flush with the (?:top|bottom) end/u.test(line))).toEqual([]);
  // Two in the middle of the length, one at the top, and that of the back.
  const line = build?.cutList.find(({ name }) => name === "Cabinet left side");
  expect(line?.notes.join()).toContain("2 dados, 2 rabbets");
  // Each side: one at the top, two below.
  const glueUp = build?.steps.find(({ title }) => title.startsWith("Glue in the cabinet left side"));
  expect(build && glueUp && glued(build, glueUp)).toBe("Dado: 4 joints, rabbet: 2 joints");
  expect(plain(glueUp?.text.join(" ") ?? "")).toContain("Bring the rabbet and the dado in the cabinet left side (E)");
});
