/** What is mitred at both ends and reaches round something is cut to it (common practice, no source). */
import { describe, expect, test } from "vitest";
import { built, lineOf, plain, stepWith } from "./plans.ts";

/** A box 19 × 9 outside, and round it four strips 1/2 thick: 20 and 10 from point to point. `off`: how far they reach past their heels. */
const box = (off = "0"): string => `plan: 1
title: Box for pegs
units: inch
outside: { width: 20 + 2 * ${off}, depth: 10, height: 8 }
stock:
  ply: { sold as: 23/32 birch plywood, measures: 23/32 }
  strip: { wood: white oak, sold as: oak strip, measures: { thick: 1/2, wide: 2 } }
piece:
  front-side: { made of: ply, as: on edge, facing: front, left: 1/2 + ${off}, right: 19 1/2 + ${off}, front: 1/2, bottom: 0, up: 8 }
  back-side: { mirror of: front-side, about: deep }
  left-end: { made of: ply, as: on edge, facing: left, left: 1/2 + ${off}, between: [front-side, back-side], bottom: 0, up: 8 }
  right-end: { mirror of: left-end, about: across }
  front-base: { made of: strip, as: on edge, facing: front, left: outside.left, right: outside.right, back: front-side.front, bottom: 0 }
  left-base: { made of: strip, as: on edge, facing: left, left: outside.left, front: 0, back: 10, bottom: 0 }
  back-base: { mirror of: front-base, about: deep }
  right-base: { mirror of: left-base, about: across }
joints:
  - { join: [front-side, back-side], to: [left-end, right-end], with: screws, glue: yes }
  - { join: [front-base, back-base], to: [left-base, right-base], with: mitre }
  - { join: front-base, to: front-side, with: nails, nail: { length: 1 } }
  - { join: back-base, to: back-side, with: nails, nail: { length: 1 } }
`;

const told = (text: string): readonly string[] =>
  built(text)
    .steps.filter(({ title }) => /^Cut the .*base .* to fit/u.test(title))
    .map(({ text: lines }) => lines.map(plain).join(" "));

describe("strips that are mitred round a box", () => {
  const [first = "", ...more] = told(box());

  test("are told to be sawn with their heels at what they lie against, 19 + 2 × 1/2 and 9 + 2 × 1/2 from point to point", () => {
    expect(more).toHaveLength(3);
    const all = [first, ...more].join(" ");
    expect(all).toMatch(
      /Length: expected 20 in from point to point\. .*the heel of that mitre \(its inner corner\) at one end of the side \(.\), .*comes to its other end/u,
    );
    expect(all).toMatch(
      /Length: expected 10 in from point to point\. .*at the outer face of the front side \(.\), .*comes to the outer face of the back side/u,
    );
  });

  test("keep the width that the list gives", () => {
    const build = built(box());
    expect(plain(stepWith(build, "Cut the long base").text.join(" "))).toContain("Width: 2 in");
    expect(build.later?.map(({ mark }) => mark)).toContain(lineOf(build, "left-base").mark);
  });
});

test("strips with heels beside the ends of what they lie against are cut from the list", () => {
  expect(told(box("1/8"))).toEqual([]);
});
