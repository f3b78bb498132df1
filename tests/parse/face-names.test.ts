import { expect, test } from "vitest";
import { partsOf } from "./assemblies/opened.ts";
import { parseText } from "./helpers.ts";

const step = (piece: string) => `plan: 1
title: Step
units: inch
outside: { width: 24, depth: 3 1/2, height: 12 }
stock:
  lumber: { sold as: 2x4, wood: spruce }
piece:
${piece}
`;

test("what stands directly in the piece may be called by a face, and is still told from one", () => {
  const parts = partsOf(
    step(`  top: { made of: lumber, as: lying flat, left: 0, right: 24, front: 0, top: 12 }
  left: { made of: lumber, as: upright, facing: left, left: top.left, front: 0, bottom: 0, top: top.bottom }
  right: { like: left, right: top.right }
joints:
  - { join: top, to: [left, right], with: screws }`),
  );
  expect(parts).toEqual({ top: "1 1/2 × 3 1/2 × 24", left: "1 1/2 × 3 1/2 × 10 1/2", right: "1 1/2 × 3 1/2 × 10 1/2" });
});

test.each([
  ["  ends: { left: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, top: 12 } }", 1],
  ["  width: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, top: 12 }", 1],
  ["  left: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, top: 12 }", 0],
])("%s", (piece, told) => {
  expect(parseText(step(piece)).findings.filter(({ rule }) => rule === "reserved-name")).toHaveLength(told);
});
