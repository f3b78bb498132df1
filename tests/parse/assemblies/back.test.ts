import { describe, expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { partsOf } from "./opened.ts";

test.each([
  // Between the sides 30 - 2 × 3/4 = 28 1/2, and 1/4 in each rabbet; 34 1/2 - 2 × 3/4 + 2 × 1/4 high.
  ["{ made of: thin, in: rabbet 1/4 deep }", "1/4 × 29 × 33 1/2"],
  ["{ made of: thin, in: laid on, short: 1/16 }", "1/4 × 29 7/8 × 34 3/8"],
])("the back of a case, held by brads: %s", (back, size) => {
  const text = `plan: 1
title: Cabinet for returned tools
units: inch
outside: { width: 30, depth: 16, height: 34 1/2 }
stock:
  sheet: { sold as: 3/4 mdf }
  thin: { sold as: 1/4 hardboard }
piece:
  cabinet: { kind: case, made of: sheet, back: ${back} }
`;
  expect(partsOf(text)).toMatchObject({ "cabinet.back-panel": size });
});

test("a case that says its back twice is told how its depth is said", () => {
  const text = `plan: 1
title: Case
units: inch
stock: { ply: { sold as: 3/4 MDF } }
outside: { width: 20, depth: 12, height: 20 }
piece:
  cabinet: { kind: case, made of: ply, back: 10, back: ply }
`;
  const { findings } = solveText(text);
  expect(findings.map(({ rule, help }) => [rule, help?.includes("`deep`")])).toEqual([["duplicate-key", true]]);
});

describe("a back that is nailed on is nailed to what stands before it", () => {
  const cabinet = (back: string): string => `plan: 1
title: Cabinet for returned tools
units: inch
outside: { width: 30, depth: 12, height: 36 }
stock:
  sheet: { sold as: 3/4 mdf }
  thin: { sold as: 1/4 hardboard }
piece:
  cabinet:
    kind: case
    made of: sheet
    back: ${back}
    openings: { across: [{ wide: equal, shelves: 1 }, { wide: equal, shelves: 1 }] }
`;
  const nailed = (back: string): readonly string[] =>
    (solveText(cabinet(back)).build?.design.joints ?? []).flatMap(({ parts, arrangements }) =>
      parts.includes("cabinet.back-panel") && arrangements.length > 0
        ? parts.filter((part) => part !== "cabinet.back-panel")
        : [],
    );

  test("the divider and the fixed shelves, besides its edges", () => {
    expect(nailed("{ made of: thin, in: rabbet 1/4 deep }").toSorted()).toEqual([
      ...["cabinet.bottom-panel", "cabinet.divider-1", "cabinet.left-side", "cabinet.opening-1-shelf-1"],
      ...["cabinet.opening-2-shelf-1", "cabinet.right-side", "cabinet.top-panel"],
    ]);
  });

  test("but not when it lies loose in grooves", () => {
    expect(nailed("{ made of: thin, in: groove }")).toEqual([]);
  });

  test("and the step says where their middles lie behind it", () => {
    const { build } = solveText(cabinet("{ made of: thin, in: rabbet 1/4 deep }"));
    const texts = build?.steps.flatMap(({ text }) => text).filter((text) => text.startsWith("Draw lines on the back"));
    // In a rabbet 1/4 deep it begins 1/2 in from the outside: the middle of the divider at 30 / 2 - 1/2 = 14 1/2 from its edge. The opening is
    // 34 1/2 high, the shelf in its middle: 36 / 2 - 1/2 = 17 1/2 from its end.
    expect(texts).toEqual([expect.stringMatching(/14\s1⁄2\sin from its left edge/u)]);
    expect(texts?.[0]).toMatch(/17\s1⁄2\sin from its bottom end/u);
  });
});
