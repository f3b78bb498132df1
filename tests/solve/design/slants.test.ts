import { describe, expect, it } from "vitest";
import { volume } from "../../../src/geometry/index.ts";
import type { Part } from "../../../src/solve/design.ts";
import { inches, UNITS_PER_INCH } from "../../../src/units/index.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { roundTo } from "../../../src/units/round.ts";
import { solveText } from "../../examples/compiled.ts";
import { designOf, soundDesign } from "./plan.ts";

const plan = (parts: string, joints: string): string => `plan: 1
title: Slants
units: inch
stock:
  sticks: { wood: ash, sold as: 8/4, planed to: { thick: 1 1/2, wide: 1 1/2 } }
  boards: { wood: ash, sold as: 5/4, planed to: 1, widths: 4 to 16 }
piece:
  top-board: { made of: boards, as: lying flat, grain: across, left: 0, right: 20, front: 0, back: 12, bottom: 17 }
  ${parts}
joints:
  ${joints}
`;
const GLUED = "- { join: stick, to: top-board, with: glue }";
const stick = (rest: string): Part =>
  soundDesign(plan(`stick: { made of: sticks, as: upright, ${rest} }`, GLUED)).parts[1] as Part;
const cubicInches = (part: Part): number => toNumber(volume(part.solid)) / UNITS_PER_INCH ** 3;
const inch = (value: { n: bigint; d: bigint }): number => toNumber(value) / UNITS_PER_INCH;
const rad = Math.PI / 180;

describe("a leg turned by an angle and cut off between two level planes", () => {
  const leg = stick(
    "left: 4, front: 3, top: 17, turn: { about: deep, by: 10 deg, at: top left edge }, ends on: [top-board.bottom, floor]",
  );
  it("is an oblique prism: its level section, 1 1/2 by 1 1/2 over the cosine, times its height", () => {
    expect(cubicInches(leg)).toBeCloseTo((1.5 * 1.5 * 17) / Math.cos(10 * rad), 6);
  });
  it("is as long as the height over the cosine and the width times the tangent", () => {
    expect(inch(leg.length)).toBeCloseTo(17 / Math.cos(10 * rad) + 1.5 * Math.tan(10 * rad), 5);
  });
  it("turns right-handed about the edge: with the thumb to the back, its foot moves to the left", () => {
    // z turns into x about y: what hangs below the edge swings to lower x.
    expect(leg.solid.low[0] / UNITS_PER_INCH).toBeCloseTo(4 - 17 * Math.tan(10 * rad), 5);
    expect(leg.solid.high[0] / UNITS_PER_INCH).toBeCloseTo(4 + 1.5 / Math.cos(10 * rad), 5);
  });
  it("stands exactly on the floor and against the board", () => {
    expect([leg.solid.low[2], leg.solid.high[2]]).toEqual([0, 17 * UNITS_PER_INCH]);
  });
});

describe("a part along a line", () => {
  it("lies along it, square ends at its points", () => {
    const { parts } = soundDesign(
      plan(
        "stick: { made of: sticks, from: { across: 3, deep: 6, up: 5 }, to: { across: 12, deep: 6, up: 17 }, ends on: top-board.bottom }",
        GLUED,
      ),
    );
    const brace = parts[1] as Part;
    // 9 by 12: 15 to the middle of the end, and half the width times the slope to the long point.
    expect(inch(brace.length)).toBeCloseTo(15 + (0.75 * 9) / 12, 5);
    expect(cubicInches(brace)).toBeCloseTo(1.5 * 1.5 * 15, 6);
    // The square end: its lower corner is half the width below, times the cosine.
    expect(brace.solid.low[2] / UNITS_PER_INCH).toBeCloseTo(5 - 0.75 * (9 / 15), 5);
  });
  it("reaches the corners that are named", () => {
    const { parts } = soundDesign(
      plan(
        "stick: { made of: sticks, as: upright, from: top-board.bottom left.front, to: { across: 2, deep: 2, up: 0 }, ends on: [top-board.bottom, floor] }",
        GLUED,
      ),
    );
    const axis = (parts[1] as Part).solid;
    expect(axis.high[2]).toBe(17 * UNITS_PER_INCH);
    const middle = (axis.low[0] + axis.high[0]) / 2 / UNITS_PER_INCH;
    expect(middle).toBeCloseTo(1, 1);
  });
});

describe("a square rail between slanting legs", () => {
  const legs = `left-leg: { made of: sticks, as: upright, left: 4, front: 3, top: 17, turn: { about: deep, by: 10, at: top left }, ends on: [top-board.bottom, floor] }
  right-leg: { made of: sticks, as: upright, right: 16, front: 3, top: 17, turn: { about: deep, by: -10, at: top right }, ends on: [top-board.bottom, floor] }
  rail: { made of: sticks, grain: across, front: 3, up from floor: 6, ends on: [left-leg.right, right-leg.left] }`;
  const joints = `- { join: [left-leg, right-leg], to: top-board, with: glue }
  - { join: rail, to: [left-leg, right-leg], with: dowels }`;
  it("is as long as the room between them where that is longest, at its lower edge", () => {
    const { parts } = soundDesign(plan(legs, joints));
    const rail = parts.find(({ id }) => id === "rail") as Part;
    // The inner faces start 1 1/2 over the cosine in from the edges at 17 high, and lean out by the tangent.
    const room = 12 - (2 * 1.5) / Math.cos(10 * rad) + 2 * (17 - 6) * Math.tan(10 * rad);
    expect(inch(rail.length)).toBeCloseTo(room, 5);
    const shorter = room - 2 * 1.5 * Math.tan(10 * rad);
    expect(cubicInches(rail)).toBeCloseTo(((room + shorter) / 2) * 1.5 * 1.5, 5);
  });
  it("its dowels stand square to the legs' faces", () => {
    const { joints: made } = soundDesign(plan(legs, joints));
    const dowels = made.flatMap(({ arrangements }) => arrangements[0]?.fasteners ?? []);
    // The slanting end is a little wider than 1 1/2 in: two in each.
    expect(dowels.length).toBe(4);
    for (const { direction } of dowels) {
      expect(Math.abs(direction[0])).toBeCloseTo(Math.cos(10 * rad), 9);
      expect(direction[2]).toBeCloseTo(Math.sin(10 * rad), 9);
    }
  });
  it("formulas see the rail's positions and length", () => {
    const { parts } = soundDesign(
      plan(
        `${legs}
  peg: { made of: sticks, grain: across, left: 0, across: rail.length, front: 3, bottom: 18 }`,
        `${joints}
  - { join: peg, to: top-board, with: glue }`,
      ),
    );
    const of = (id: string) => parts.find((part) => part.id === id) as Part;
    // What is worked out from another is cut to the next mark below it.
    expect(of("peg").length).toEqual(roundTo(of("rail").length, inches(1, 16), "down"));
  });
});

describe("a rail between tapered posts", () => {
  const source = (rail: string) =>
    plan(
      `left-post: { made of: sticks, as: upright, left: 2, front: 3, bottom: 0, top: 17, taper: { faces: right, at: bottom, to: 1, over: 12 } }
  right-post: { mirror of: left-post, about: across }
  rail: { made of: sticks, grain: across, front: 3, bottom: 2, ${rail} }`,
      `- { join: [left-post, right-post], to: top-board, with: glue }
  - { join: rail, to: [left-post, right-post], with: screws, from: left-post, count: 1 }`,
    ).replace("units: inch", "units: inch\noutside: { width: 20, depth: 12, height: 18 }");
  it("reaches the slopes: they have lost 1/2 at the floor, and nothing 12 above it", () => {
    const { parts, joints } = soundDesign(source("ends on: [left-post.right taper, right-post.left taper]"));
    const rail = parts.find(({ id }) => id === "rail") as Part;
    const room = (up: number) => 13 + 2 * 0.5 * (1 - up / 12);
    expect(inch(rail.length)).toBeCloseTo(room(2), 5);
    expect(cubicInches(rail)).toBeCloseTo(((room(2) + room(3.5)) / 2) * 1.5 * 1.5, 5);
    // The screws stand square to the slope of 1 in 24.
    const screws = joints.flatMap(({ arrangements }) => arrangements[0]?.fasteners ?? []);
    expect(screws.length).toBe(2);
    for (const { direction } of screws) expect(Math.abs(direction[2] / direction[0])).toBeCloseTo(1 / 24, 9);
  });
  it("without the word it ends where the posts were before they were tapered, and does not touch them", () => {
    const { findings } = designOf(source("ends on: [left-post.right, right-post.left]"));
    expect(findings.map(({ rule }) => rule)).toContain("joint-does-not-touch");
  });
});

describe("alike however they are turned", () => {
  it("four legs splayed one way are one line of the cut list", () => {
    const leg = (name: string, at: string, by: number, edge: string) =>
      `${name}: { made of: sticks, as: upright, ${at}, top: 17, turn: { about: deep, by: ${by}, at: top ${edge} }, ends on: [top-board.bottom, floor] }`;
    const source = plan(
      [
        leg("a", "left: 4, front: 1", 10, "left"),
        leg("b", "left: 4, back: 11", 10, "left"),
        leg("c", "right: 16, front: 1", -10, "right"),
        leg("d", "right: 16, back: 11", -10, "right"),
      ].join("\n  "),
      "- { join: [a, b, c, d], to: top-board, with: glue }",
    );
    const { build } = solveText(source);
    expect(build?.cutList.map(({ parts }) => parts.length).toSorted()).toEqual([1, 4]);
  });
});

describe("angles are told", () => {
  // 2 and 1 1/2 in over 17: arc tangents 6.71 and 5.04 degrees.
  const source = plan(
    "stick: { made of: sticks, as: upright, from: { across: 4, deep: 4, up: 17 }, to: { across: 2, deep: 2 1/2, up: 0 }, ends on: [top-board.bottom, floor] }",
    GLUED,
  );
  const { build } = solveText(source);
  it("on the cut list", () => {
    expect(build?.cutList.flatMap(({ notes }) => notes)).toContain(
      "both ends cut at 6.7° and 5°, length to the long points",
    );
  });
  it("in the steps, with the face that each is seen on and the long point", () => {
    expect(build?.steps.flatMap(({ text }) => text).filter((line) => line.includes("°"))).toEqual([
      "Cut the top end of the stick off at 6.7° from square across its front and 5° from square across its right, so that its long point is at the right and the back.",
      "Cut the bottom end of the stick off at 6.7° from square across its front and 5° from square across its right, so that its long point is at the left and the front.",
    ]);
  });
});

describe("what cannot be is told", () => {
  it.each([
    ["left: 4, front: 3, bottom: 0, top: 17, turn: { about: deep, by: 10, at: left front }", "turn-edge"],
    ["left: 4, front: 3, bottom: 0, top: 17, ends on: top-board.bottom taper", "no-plane-to-end-on"],
    ["from: { across: 1, deep: 1, up: 1 }, to: { across: 1, deep: 1, up: 1 }", "no-room"],
    ["front: 3, left: 4, turn: { about: deep, by: 10, at: top left }, ends on: [top-board.bottom, floor]", "circle"],
    ["from: top-board.bottom", "missing-key"],
    ["left: 4, front: 3, bottom: 0, top: 17, turn: { about: deep, by: 10 in, at: top left }", "wrong-kind"],
  ])("%s: %s", (rest, rule) => {
    const { findings } = designOf(plan(`stick: { made of: sticks, as: upright, ${rest} }`, GLUED));
    expect(findings.map((finding) => finding.rule)).toContain(rule);
  });
});
