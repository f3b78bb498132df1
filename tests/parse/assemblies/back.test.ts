import { expect, test } from "vitest";
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
