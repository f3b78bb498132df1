import { describe, expect, it } from "vitest";
import { volume } from "../../../src/geometry/index.ts";
import type { Part } from "../../../src/solve/design.ts";
import { UNITS_PER_INCH } from "../../../src/units/index.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { sizeOf, soundDesign } from "./plan.ts";

/** A post with a shape, and a foot that it stands on so that nothing floats. */
const post = (shape: string): Part => {
  const { parts } = soundDesign(`plan: 1
title: Post
units: inch
stock:
  wood: { wood: cherry, sold as: 8/4, planed to: { thick: 1 1/2, wide: 1 1/2 } }
  plate: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }
piece:
  foot: { made of: plate, as: lying flat, grain: across, left: -2, right: 4, front: -1, back: 3, top: 0 }
  post: { made of: wood, as: upright, left: 0, front: 0, bottom: 0, up: 20, ${shape} }
joints:
  - { join: post, to: foot, with: glue }
`);
  return parts[1] as Part;
};
const cubicInches = (part: Part): number => toNumber(volume(part.solid)) / UNITS_PER_INCH ** 3;
const WHOLE = 1.5 * 1.5 * 20;

describe("volumes after cutting, by the formulas of solid geometry", () => {
  it.each([
    // Frustum of a pyramid: h (A + a + √(A a)) / 3.
    [
      "taper: { faces: [left, right, front, back], at: bottom, to: 1, over: 6 }",
      1.5 * 1.5 * 14 + (6 * (2.25 + 1 + 1.5)) / 3,
    ],
    // One face: a wedge 6 long and 1/2 thick at its end.
    ["taper: { faces: left, at: bottom, to: 1, over: 6 }", WHOLE - (6 * 0.5 * 1.5) / 2],
    // Two neighbouring faces: the square runs from 1 1/2 to 1, a frustum again.
    ["taper: { faces: [left, front], at: bottom, to: 1, over: 6 }", 1.5 * 1.5 * 14 + (6 * (2.25 + 1 + 1.5)) / 3],
    ["chamfer: { along: left front, by: 1/4 }", WHOLE - (0.25 * 0.25 * 20) / 2],
    ["bevel: { along: top front, wide: 1/2, deep: 1 }", WHOLE - (0.5 * 1 * 1.5) / 2],
    ["notch: { at: left front, wide: 1/4, deep: 1/2 }", WHOLE - 0.25 * 0.5 * 20],
    ["rabbet: { along: left back, wide: 1/2, deep: 1/4 }", WHOLE - 0.5 * 0.25 * 20],
    // From 4 above its lower end to 1 below its upper end.
    ["rabbet: { along: left back, wide: 1/2, deep: 1/4, from: bottom + 4, to: top - 1 }", WHOLE - 0.5 * 0.25 * 15],
    ["groove: { in: left, near: front, in from: 1/2, wide: 1/4, deep: 3/8 }", WHOLE - 0.25 * 0.375 * 20],
    [
      "groove: { in: left, near: front, in from: 1/2, wide: 1/4, deep: 3/8, from: bottom + 2, to: top - 3 }",
      WHOLE - 0.25 * 0.375 * 15,
    ],
    ["dado: { in: left, near: bottom, in from: 4, wide: 3/4, deep: 1/4 }", WHOLE - 0.75 * 0.25 * 1.5],
    ["mortise: { in: front, near: left, in from: 1/2, wide: 1/2, deep: 1, from: 10, to: 12 }", WHOLE - 0.5 * 1 * 2],
    ["tenon: { on: top, long: 1, thick: 1/2, wide: 1 }", WHOLE + 1 * 0.5 * 1],
    // Holes are told, not cut out of the solid.
    ["hole: { in: left, from front: 3/4, from bottom: 5, diameter: 1/2, deep: 1 }", WHOLE],
  ])("%s", (shape, expected) => {
    expect(cubicInches(post(shape))).toBeCloseTo(expected, 9);
  });

  it("a tenon counts in the length", () => {
    expect(sizeOf(post("tenon: { on: top, long: 1, thick: 1/2, wide: 1 }"))).toBe("1 1/2 × 1 1/2 × 21");
  });
});

describe("what is let in", () => {
  const shelf = (joint: string): Part => {
    const { parts } = soundDesign(`plan: 1
title: Shelf
units: inch
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 12 }
piece:
  left-side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 8, bottom: 0, up: 30 }
  right-side: { like: left-side, left: 24 }
  shelf: { made of: wood, as: lying flat, between: [left-side, right-side], front: 0, back: 8, bottom: 10 }
joints:
  - { join: shelf, to: [left-side, right-side], ${joint} }
`);
    return parts[2] as Part;
  };
  it.each([
    ["with: dado, deep: 1/4", "3/4 × 8 × 23 3/4"],
    ["with: dado, deep: 3/8", "3/4 × 8 × 24"],
    ["with: groove, deep: 3/8, play: 1/8", "3/4 × 8 × 23 3/4"],
    ["with: screws, from: left-side", "3/4 × 8 × 23 1/4"],
  ])("%s: %s", (joint, size) => {
    expect(sizeOf(shelf(joint))).toBe(size);
  });
  it("a stopped dado leaves the tongue short: its strip is cut from the shelf", () => {
    const cut = cubicInches(shelf("with: dado, deep: 1/4"));
    const stopped = cubicInches(shelf("with: dado, deep: 1/4, stopped: 1/2 from front"));
    expect(cut - stopped).toBeCloseTo(2 * 0.25 * 0.5 * 0.75, 9);
  });
});
