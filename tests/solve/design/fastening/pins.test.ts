import { describe, expect, it } from "vitest";
import { soundDesign } from "../plan.ts";
import { errorsOf, fitted, inch } from "./piece.ts";

const shelf = (joint: string): string => `plan: 1
title: Shelf
units: inch
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 12 }
piece:
  left-side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 10, bottom: 0, up: 30 }
  right-side: { like: left-side, left: 24 }
  lid: { made of: wood, as: lying flat, between: [left-side, right-side], front: 0, back: 10, top: left-side.top }
  shelf: { made of: wood, as: lying flat, between: [left-side, right-side], front: 0, back: 10, bottom: 12 }
joints:
  - { join: lid, to: [left-side, right-side], with: screws, from: left-side, ${joint.startsWith("screw") ? joint : "count: 2"} }
  - { join: shelf, to: [left-side, right-side], ${joint.startsWith("screw") ? "with: glue" : joint} }
`;

describe("shelf pins", () => {
  // 1/4 in × 3/8 in deep, shelf 1/8 in shorter in all: common practice, no source.
  it("sit in holes 1/4 in wide and 3/8 in deep, just under the shelf, 1 1/2 in from its edges", () => {
    const { joint, best } = fitted(shelf("with: shelf pins"), "shelf");
    expect(joint.kind).toBe("resting");
    expect(best.holes.map(({ at }) => at.map(inch))).toEqual([
      [0.75, 1.5, 12 - 1 / 8],
      [0.75, 8.5, 12 - 1 / 8],
    ]);
    for (const { stages } of best.holes)
      expect([inch(stages[0]?.diameter), inch(stages[0]?.depth)]).toEqual([1 / 4, 3 / 8]);
  });

  it("leave 1/16 in open at each end, or as said", () => {
    const length = (text: string) => inch(soundDesign(text).parts.find(({ id }) => id === "shelf")?.length);
    expect(length(shelf("with: shelf pins"))).toBe(23.25 - 1 / 8);
    expect(length(shelf("with: shelf pins, gap: 3/32"))).toBe(23.25 - 3 / 16);
  });
});

// Plug 3/8 in over a number 8 screw, 3/8 in deep but no more than a third of 3/4 in: common practice, no source.
it("a plugged screw is counterbored for its plug", () => {
  const { best } = fitted(shelf("screw: { gauge: 8, head: plugged }"), "lid");
  const hole = best.holes.find(({ kind }) => kind === "clearance");
  expect([inch(hole?.stages[0]?.diameter), inch(hole?.stages[0]?.depth)]).toEqual([3 / 8, 1 / 4]);
  expect(best.fasteners[0]?.head.seat).toBe("plugged");
  expect(best.fasteners[0]?.with).toEqual(["wood plug 3\u20448 in"]);
});

it("a joint on pins still has to be a shelf between sides", () => {
  expect(errorsOf(shelf("with: shelf pins").replace("bottom: 12", "bottom: 32"))).not.toEqual([]);
});
