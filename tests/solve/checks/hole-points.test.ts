/** The point of a drill reaches past the depth that it bores to. */
import { expect, test } from "vitest";
import { stepExample } from "../../../src/findings/example.ts";
import { solveText } from "../../examples/compiled.ts";

/** The tread is 1 1/2 in thick, its groove 1/2 in deep in the bottom: 1 in of wood is over it. */
const found = (deep: string): readonly string[] =>
  solveText(
    stepExample([
      "top: 12 }",
      `top: 12, groove: { in: bottom, near: front, in from: 1 1/2, wide: 1/2, deep: 1/2 }, hole: { in: top, from left: 12, from front: 1 3/4, diameter: 1/4, deep: ${deep} } }`,
    ]),
  ).findings.map(({ rule }) => rule);

// A point of 118° (ISO 235, from memory) stands out 0.300 of the diameter: 0.075 in of a bit of 1/4 in.
test("a hole ends where its point still has wood before a groove", () => {
  expect(found("1")).toContain("hole-runs-into-cut");
  expect(found("15/16")).toContain("hole-runs-into-cut");
  expect(found("7/8")).not.toContain("hole-runs-into-cut");
});
