import { describe, expect, test } from "vitest";
import { said, solveText } from "../../examples/compiled.ts";

/** Two sides, 40 in high, and a back of plywood on their edges, 40 × 20 in. */
const nailed = (how: string): string => `plan: 1
title: Back
units: inch
outside: { width: 20, depth: 12, height: 40 }
stock:
  boards: { wood: red oak, sold as: 4/4, planed to: 3/4 }
  sheet: { sold as: 1/4 birch plywood, measures: 7/32 }
piece:
  left: { made of: boards, as: upright, facing: left, left: outside.left, front: outside.front, back: rear.front, bottom: 0, top: outside.top }
  right: { mirror of: left, about: across }
  rear: { made of: sheet, facing: back, grain: up, left: outside.left, right: outside.right, back: outside.back, bottom: 0, top: outside.top }
joints:
  - { join: rear, to: [left, right], with: ${how} }
`;

function textOf(how: string): string {
  const { build, findings } = solveText(nailed(how));
  const text = build?.steps.flatMap(({ text }) => text).find((each) => /^Drive \d+ /u.test(each));
  if (!text) throw new Error(said(findings).join("\n"));
  return text;
}

describe("how far apart nails stand", () => {
  // Staples stand 5 in apart or a little more, the outer ones 3/4 in from the ends (common practice, no source): (40 - 1 1/2) / 7 = 5 1/2 in.
  test("is told to the half inch", () => {
    expect(textOf("staples")).toMatch(
      /, about 5[ \u202f]1⁄2[ \u202f]in apart, the outer ones 3⁄4[ \u202f]in from its ends\.$/u,
    );
  });
  // Three in 40 in, the outer ones at most 2 in from the ends: 18 to 20 in from one to the next.
  test("follows their number", () => {
    expect(textOf("brads, count: 3")).toMatch(
      /, about (?:1[89](?:[ \u202f]1⁄2)?|20)[ \u202f]in apart, the outer ones 1[ \u202f]in from its ends\.$/u,
    );
  });
  test("two are told from the ends alone", () => {
    expect(textOf("brads, count: 2")).toMatch(/ apart, 1[ \u202f]in from its ends\.$/u);
  });
  test("is not told of one in each joint, nor of screws, whose holes are in the drawing", () => {
    expect(textOf("brads, count: 1")).not.toContain("apart");
    expect(textOf("screws, screw: { length: 1 }")).not.toContain("apart");
  });
});
