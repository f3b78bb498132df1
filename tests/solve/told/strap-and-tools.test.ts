/** Words that follow from where hardware lies and from what is told; by hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// Its bracket lies on the top panel, 1 in from the back edge: its height is that of the panel wherever it goes.
test("a bracket on a top is moved along its back edge", () => {
  expect(textOfStep(stepWith(built("manuals-bookcase"), /^Fit the wall strap/u))).toContain(
    "to the next stud, at the same distance from the back edge, and bore",
  );
});

const tools = (name: string): readonly string[] => built(name).tools.map(({ tool }) => tool);

// Hooks in seven rows at even distances; shelf pins 1 1/4 in apart, which a rule measures; and screws, which no hammer drives.
test("dividers and hammers are listed where something is stepped off or struck", () => {
  expect(tools("key-cabinet")).toContain("Dividers");
  expect(tools("manuals-bookcase")).not.toContain("Dividers");
  expect(tools("old-plans/wall-shelf")).not.toContain("Dividers");
  expect(tools("old-plans/wall-shelf").filter((tool) => tool.startsWith("Hammer"))).toEqual([]);
});
