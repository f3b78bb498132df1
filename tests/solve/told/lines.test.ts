import { describe, expect, test } from "vitest";
import { said, solveText, textOf } from "../../examples/compiled.ts";

const linesOf = (text: string): readonly string[] => {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  return build.steps
    .flatMap((step) => step.text)
    .filter((each) => each.startsWith("Draw lines on"))
    .map((each) => each.replaceAll("\u202f", " ").replaceAll("\u2044", "/"));
};

/** A board 4 in wide on a rail 3/4 in thick, flush with it at the front. */
const ledge = (longer: string): string => `plan: 1
title: Ledge
units: inch
stock: { wood: { wood: poplar, sold as: 4/4, planed to: 3/4, widths: 4 to 12 } }
piece:
  rail: { made of: wood, as: upright, facing: front, left: ${longer}, across: 24 + 2 * (0 - ${longer}), front: 0, bottom: 0, up: 3 }
  board: { made of: wood, as: lying flat, left: 0, across: 24, front: 0, deep: 4, bottom: rail.top }
joints: [{ join: board, to: rail, with: nails }]
`;

describe("where a nail must hit wood that is narrower than what it is driven through", () => {
  test("its line is told from the nearer edge: half of 3/4", () => {
    expect(linesOf(ledge("0"))).toEqual([
      "Draw lines on the board (A) to nail along: over the rail (B) 3/8 in from its front edge.",
    ]);
  });

  test("also where the wood below goes on beside it: no nail is without its line", () => {
    expect(linesOf(ledge("-3"))).toEqual(linesOf(ledge("0")));
  });

  // Of four slats the outer two have the rail bare beside them, the inner two do not.
  test("and what is told of one of several alike is told of all", () => {
    expect(linesOf(textOf("old-plans/library-table")).some((line) => line.startsWith("Draw lines on four slats"))).toBe(
      true,
    );
  });
});

test("a panel in a rabbet 1/4 deep is nailed 1/8 from its edges", () => {
  expect(linesOf(textOf("rope-chest")).join()).toContain(
    "1/8 in from its front and back edges and its left and right ends",
  );
});

test("lines are measured from what a panel is let into, not from its edge in there", () => {
  // The rails are 5/8 in high, 4 9/64 in above the bottom panel: the middle is 4 9/64 + 1 in above it.
  const [line] = linesOf(textOf("key-cabinet"));
  expect(line).toMatch(/over three key rails \(K\) 5 9\/64 in, .* in from the bottom panel \(C\)\.$/u);
});
