/** What is mitred at both ends and reaches round something is cut to it (common practice, no source). */
import { describe, expect, test } from "vitest";
import { partAfter } from "../../../src/solve/build/part-after.ts";
import type { Build } from "../../../src/solve/build.ts";
import { built, lineOf, plain, stepWith } from "./plans.ts";

const LID = `  lid:
    board: { made of: thin, as: lying flat, grain: across, left: 1/2, right: 19 1/2, front: 1/2, back: 9 1/2, on: front-side }
    front-strip: { made of: bar, as: on edge, grain: across, facing: front, left: 0, right: 20, front: 0, on: front-base }
    back-strip: { mirror of: lid.front-strip, about: deep }
    left-strip: { made of: bar, as: on edge, grain: deep, facing: left, front: 0, back: 10, left: 0, on: left-base }
    right-strip: { mirror of: lid.left-strip, about: across }`;
const LID_JOINTS = `  - { join: [lid.front-strip, lid.back-strip], to: [lid.left-strip, lid.right-strip], with: mitre }
  - { join: [lid.front-strip, lid.back-strip, lid.left-strip, lid.right-strip], to: lid.board, with: nails, nail: { length: 1 } }
  - { join: lid.back-strip, to: back-base, with: butt hinges, hardware: hinge, opens: top, count: 2 }`;

/**
 * A box 19 × 9 outside, and round it four strips 1/2 thick: 20 and 10 from point to point. `off`: how far they reach past their heels; `lid`:
 * whether a lid in a frame lies over it, as large as what they make.
 */
const box = (off = "0", lid = false): string => `plan: 1
title: Box for pegs
units: inch
outside: { width: 20 + 2 * ${off}, depth: 10, height: ${lid ? "8 1/2" : "8"} }
stock:
  ply: { sold as: 23/32 birch plywood, measures: 23/32 }
  strip: { wood: white oak, sold as: oak strip, measures: { thick: 1/2, wide: 2 } }
${lid ? "  bar: { wood: white oak, sold as: oak bar, measures: { thick: 1/2, wide: 1/2 } }\n  thin: { sold as: 1/2 MDF }\nhardware:\n  hinge: { kind: butt hinge, long: 2, leaf: 3/8 }" : ""}
piece:
  front-side: { made of: ply, as: on edge, facing: front, left: 1/2 + ${off}, right: 19 1/2 + ${off}, front: 1/2, bottom: 0, up: 8 }
  back-side: { mirror of: front-side, about: deep }
  left-end: { made of: ply, as: on edge, facing: left, left: 1/2 + ${off}, between: [front-side, back-side], bottom: 0, up: 8 }
  right-end: { mirror of: left-end, about: across }
  front-base: { made of: strip, as: on edge, facing: front, left: outside.left, right: outside.right, back: front-side.front, ${lid ? "top: 8" : "bottom: 0"} }
  left-base: { made of: strip, as: on edge, facing: left, left: outside.left, front: 0, back: 10, ${lid ? "top: 8" : "bottom: 0"} }
  back-base: { mirror of: front-base, about: deep }
  right-base: { mirror of: left-base, about: across }
${lid ? LID : ""}
joints:
  - { join: [front-side, back-side], to: [left-end, right-end], with: screws, glue: yes }
  - { join: [front-base, back-base], to: [left-base, right-base], with: mitre }
  - { join: front-base, to: front-side, with: nails, nail: { length: 1 } }
  - { join: back-base, to: back-side, with: nails, nail: { length: 1 } }
${lid ? LID_JOINTS : ""}
`;

const told = (text: string): readonly string[] =>
  built(text)
    .steps.filter(({ title }) => /^Cut the .*base .* to fit/u.test(title))
    .map(({ text: lines }) => lines.map(plain).join(" "));

/** In which something is cut into a part. */
const ringSteps = ({ steps }: Build, id: string): Build["steps"] =>
  steps.filter(({ actions }) =>
    actions.some((each) => each.do === "machine" && each.part === id && each.features.length > 0),
  );

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

  // Strips 1/2 thick, mitred at 45 degrees: the heel is 1/2 from the point.
  test("have their mitres told where they are cut to fit, and nowhere else", () => {
    const build = built(box());
    expect(first).toContain(
      "Its left end and its right end are both mitred so: full length at the front, 1/2 in shorter at the back, an angle of 45°.",
    );
    expect(build.steps.filter(({ title }) => /^Shape the .*base/u.test(title))).toEqual([]);
    const steps = ringSteps(build, "front-base");
    expect(steps.map(({ kind, bench }) => [kind, bench])).toEqual([["fit", 15]]);
  });

  test("keep their mitres in what is worked on them later", () => {
    const build = built(box("0", true));
    const [fit, joints] = ringSteps(build, "back-base");
    expect([fit?.kind, joints?.kind]).toEqual(["fit", "make"]);
    const part = build.parts.find(({ id }) => id === "back-base");
    if (!part || !fit || !joints) throw new Error("no such part, or steps");
    const mitres = (after: number): number =>
      partAfter(build, part, after).features.filter(({ kind }) => kind === "mitre").length;
    expect([mitres(fit.number - 1), mitres(fit.number), mitres(joints.number)]).toEqual([0, 2, 2]);
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

// 20 and 10 from point to point, as the ring below came out: what is flush with it is marked from it.
test("the frame of a lid over them is cut on them, when they are on and the work stands", () => {
  const build = built(box("0", true));
  const cut = build.steps.filter(({ text }) => plain(text.join(" ")).includes("as it lies there in the piece"));
  const told = cut.map(({ text }) => plain(text.join(" "))).join(" ");
  expect(told).toMatch(/Length: expected 20 in from point to point\. .*lay it on the front base \(.\)/u);
  expect(told).toMatch(/Length: expected 10 in from point to point\. .*lay it on the base \(.\)/u);
  const ring = build.steps.filter(({ actions }) =>
    actions.some((each) => each.do === "add" && each.parts.some((id) => id.endsWith("-base"))),
  );
  expect(ring).toHaveLength(4);
  const [first] = cut;
  expect(first?.number).toBeGreaterThan(ring.at(-1)?.number ?? 0);
  expect(cut.map(({ up }) => up)).toEqual(cut.map(() => [0, 0, 1]));
});

// Three screws about the middle of a leaf 2 in long that begins 3 in from either end: 4 - 43/64 and 4 + 43/64.
test("holes near either end are told from that one: how long it comes out is not known before", () => {
  const text = plain(stepWith(built(box("0", true)), "Cut the joints in the back base").text.join(" "));
  expect(text).toContain("from 3 21/64 in to 4 43/64 in from the left end");
  expect(text).toContain("from 3 21/64 in to 4 43/64 in from the right end");
});
