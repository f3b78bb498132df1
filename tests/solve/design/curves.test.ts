import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { boxPlanes, intersect, realEdges, volume } from "../../../src/geometry/index.ts";
import type { Part } from "../../../src/solve/design.ts";
import { TOLERANCE, UNITS_PER_INCH, UNITS_PER_MM } from "../../../src/units/index.ts";
import { rational, toNumber } from "../../../src/units/rational.ts";
import { auditOf, built, solveText } from "../../examples/compiled.ts";
import { designOf, soundDesign } from "./plan.ts";

const plan = (shape: string): string => `plan: 1
title: Board
units: inch
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 12 }
piece:
  board: { made of: wood, as: on edge, grain: across, left: 0, right: 24, front: 0, bottom: 0, top: 6, ${shape} }
  foot: { made of: wood, as: lying flat, grain: across, left: 20, right: 24, front: -4, back: 0, bottom: 5 }
joints:
  - { join: foot, to: board, with: glue }
`;
const board = (shape: string): Part => soundDesign(plan(shape)).parts[0] as Part;
const square = (part: Part): number => toNumber(volume(part.solid)) / UNITS_PER_INCH ** 3 / 0.75;
const WHOLE = 24 * 6;

/** Area of the segment of a circle over a chord: r² (a − sin a) / 2, a = 2 asin(w / 2r), half a circle at most. */
const segment = (w: number, h: number): number => {
  const r = (w * w) / (8 * h) + h / 2;
  const a = 2 * Math.asin(Math.min(1, w / (2 * r)));
  return (r * r * (a - Math.sin(a))) / 2;
};
/** What a quarter circle leaves of its square. */
const spandrel = (r: number): number => r * r * (1 - Math.PI / 4);
const FLAT = 0.05 / 25.4;

describe("areas by the formulas of plane geometry; the flats leave at most 0.05 mm of wood along the curve", () => {
  it.each([
    ["arch: { in: bottom, deep: 1 1/4, from: left + 3, to: right - 3 }", segment(18, 1.25), 18.3],
    ["arch: { in: top, deep: 1 }", segment(24, 1), 24.2],
    ["arch: { in: bottom, deep: 2, from: 4, to: 8 }", segment(4, 2), 6.3],
    ["arch: { in: left, deep: 1/2, from: bottom + 1, to: top - 1 }", segment(4, 0.5), 4.2],
    ["corner radius: { at: left top, radius: 1 }", spandrel(1), 1.6],
    ["corner radius: { at: [left top, right top, left bottom], radius: 3/4 }", 3 * spandrel(0.75), 3.6],
    ["cut-out: { in: front, wide: 4, high: 1 1/4, from top: 1, radius: 5/8 }", 4 * 1.25 - 4 * spandrel(0.625), 4],
    ["cut-out: { in: front, wide: 4, high: 1 1/4, from left: 2, from bottom: 2 }", 5, 0],
    ["cut-out: { in: back, wide: 2, high: 2, radius: 1 }", Math.PI, 6.3],
    ["slot: { in: front, near: bottom, in from: 2, wide: 1/2, from: 3, to: 9 }", 5.5 * 0.5 + Math.PI / 16, 1.6],
  ])("%s", (shape, taken, curve) => {
    const left = square(board(shape));
    expect(left).toBeGreaterThanOrEqual(WHOLE - taken - 1e-9);
    expect(left).toBeLessThanOrEqual(WHOLE - taken + curve * FLAT + 1e-9);
  });

  it("a stopped slot takes only its depth", () => {
    const left = square(board("slot: { in: front, near: bottom, in from: 2, wide: 1/2, deep: 1/4, from: 3, to: 9 }"));
    expect(WHOLE - left).toBeCloseTo((5.5 * 0.5 + Math.PI / 16) / 3, 2);
  });

  it("a rounded edge loses a spandrel along its whole length", () => {
    const part = board("round-over: [{ along: top front, radius: 1/4 }, { along: bottom front, radius: 1/4 }]");
    const lost = (WHOLE - square(part)) * 0.75;
    expect(lost).toBeLessThanOrEqual(2 * 24 * spandrel(0.25) + 1e-9);
    expect(lost).toBeGreaterThanOrEqual(2 * 24 * (spandrel(0.25) - 0.4 * FLAT) - 1e-9);
  });

  it("but stays square along the seat of a hinge leaf", () => {
    // The side is 3/4 by 14, its rabbet 3/8 by 1/2, its seats 7/8 by 1/32.
    const side = built("old-plans/bookcase").parts.find(({ id }) => id === "left-side");
    const inches = (n: number) => rational(BigInt(Math.round(n * 32)) * BigInt(UNITS_PER_INCH), 32n);
    const seats = side?.features.filter((each) => each.kind === "mortise") ?? [];
    const sections = seats.map((seat) => {
      const low = "size" in seat ? toNumber(seat.origin[2]) / UNITS_PER_INCH : 0;
      const slab = boxPlanes([inches(-99), inches(-99), inches(low)], [inches(99), inches(99), inches(low + 1)]);
      return side ? toNumber(volume(intersect(side.solid, slab))) / UNITS_PER_INCH ** 3 : 0;
    });
    expect(sections).toHaveLength(3);
    for (const section of sections) expect(section).toBeCloseTo(0.75 * 14 - (3 / 8) * (1 / 2) - (7 / 8) * (1 / 32), 6);
  });

  it("all edges of the broad face in one word: four chamfers that meet in mitres", () => {
    // A frustum 1/8 high: what is lost of its prism is that less (A + a + √(A a)) / 3 for similar ends, here by integration.
    const lost = (WHOLE - square(board("edges: chamfer 1/8"))) * 0.75;
    const at = (z: number): number => (24 - 2 * z) * (6 - 2 * z);
    // Simpson's rule is exact for a square of the height.
    const left = (0.125 / 6) * (at(0) + 4 * at(0.0625) + at(0.125));
    expect(lost).toBeCloseTo(24 * 6 * 0.125 - left, 9);
  });
});

describe("an arch", () => {
  const part = board("arch: { in: bottom, deep: 1 1/4, from: left + 3, to: right - 3 }");
  it("keeps its true radius: w² / 8h + h / 2", () => {
    const [feature] = part.features;
    expect(feature && "radius" in feature && toNumber(feature.radius) / UNITS_PER_INCH).toBeCloseTo(33.025, 9);
  });
  it("has its corners on the true arc, to a unit", () => {
    const centre = [12 * UNITS_PER_INCH, (1.25 - 33.025) * UNITS_PER_INCH];
    const low = part.solid.pieces
      .flatMap((piece) => piece.vertices)
      .filter(({ x, z }) => z > 0 && z < 508_000 && x > 0);
    const off = low.map(
      ({ x, z }) => 33.025 * UNITS_PER_INCH - Math.hypot(x - (centre[0] as number), z - (centre[1] as number)),
    );
    const inner = off.filter((d) => Math.abs(d) < 0.06 * UNITS_PER_MM);
    expect(inner.length).toBeGreaterThan(20);
    for (const d of inner) expect(d).toBeGreaterThan(-1);
  });
  it("draws no lines where its flats meet", () => {
    const edges = realEdges(part.solid).filter(({ smooth }) => smooth === undefined);
    const across = edges.filter(({ from, to }) => Math.abs(from[1] - to[1]) > TOLERANCE);
    // Four corners of the board and the two ends of the arch.
    expect(across.length).toBe(6);
  });
});

describe("curves that do not fit are told", () => {
  it.each([
    "arch: { in: bottom, deep: 3, from: 4, to: 8 }",
    "arch: { in: bottom, deep: 1, from: 8, to: 4 }",
    "arch: { in: bottom, deep: 0 }",
    "corner radius: { at: left top, radius: 7 }",
    "round-over: { along: top front, radius: 1 }",
    "cut-out: { in: front, wide: 4, high: 1, radius: 3/4 }",
    "cut-out: { in: front, wide: 25, high: 1 }",
    "slot: { in: front, near: bottom, in from: 2, wide: 1, from: 3, to: 3 1/2 }",
  ])("%s", (shape) => {
    expect(designOf(plan(shape)).findings.map(({ rule }) => rule)).toEqual(["curve-does-not-fit"]);
  });
});

describe("holes and curves", () => {
  const bench = readFileSync(new URL("plans/hall-bench.yaml", import.meta.url), "utf8");
  const at = (radius: string): string => bench.replace("radius: 1 1/2 }", `radius: ${radius} }`);
  // A disc of 18: at 9 from the left its edge is the front itself; at 2 from the left, 9 - √(9² - 7²) = 3.34 from it.
  it.each([
    ["9", "1", false],
    ["9 1/8", "1", false],
    ["2", "2", true],
    ["2", "4", false],
  ])("in a round panel a hole %s from the left and %s from the front is laid bare: %s", (left, front, bare) => {
    const disc = `plan: 1
title: Disc
units: inch
outside: { width: 18, depth: 18, height: 3/4 }
stock:
  ply: { sold as: 3/4 birch plywood, measures: 3/4 }
piece:
  disc:
    made of: ply
    as: lying flat
    grain: across
    left: 0
    right: 18
    front: 0
    back: 18
    bottom: 0
    corner radius: { at: [left front, right front, left back, right back], radius: 9 }
    hole: { in: bottom, from left: ${left}, from front: ${front}, diameter: 1/4, deep: 1/2 }
`;
    const rules = solveText(disc).findings.map(({ rule }) => rule);
    expect(rules.includes("hole-runs-into-cut")).toBe(bare);
  });
  it.each(["5", "8"])("with corners of %s what compiles keeps its promises", (radius) => {
    const { build } = solveText(at(radius));
    expect(build && auditOf(at(radius), build)).toEqual([]);
  });
});
