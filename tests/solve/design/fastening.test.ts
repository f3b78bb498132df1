import { describe, expect, it } from "vitest";
import { INCH_SCREWS, METRIC_SCREWS } from "../../../src/solve/design/fastening/catalogue.ts";
import type { Fastener, Hole } from "../../../src/solve/design.ts";
import { inches, toInches, toMillimetres } from "../../../src/units/index.ts";
import { compare, toNumber } from "../../../src/units/rational.ts";
import { soundDesign } from "./plan.ts";

/** A rail of some stock between two stiles, and what joins it. */
const frame = (stock: string, wide: string, joint: string): string => `plan: 1
title: Frame
units: inch
stock:
  stile: { wood: yellow-poplar, sold as: 8/4, planed to: 1 1/2, widths: 3 to 8 }
  rail: ${stock}
piece:
  left-stile: { made of: stile, as: upright, facing: left, width: 3, left: 0, front: 0, bottom: 0, up: 12 }
  right-stile: { like: left-stile, left: 20 }
  rail: { made of: rail, as: on edge, facing: front, between: [left-stile, right-stile], front: 1/4, bottom: 2, up: ${wide} }
joints:
  - { join: rail, to: [left-stile, right-stile], ${joint} }
`;
const poplar = (thick: string): string => `{ wood: yellow-poplar, sold as: 8/4, planed to: ${thick}, widths: 3 to 8 }`;

function first(text: string): { fasteners: readonly Fastener[]; holes: readonly Hole[] } {
  const { arrangements } = soundDesign(text).joints[0] ?? { arrangements: [] };
  const [best] = arrangements;
  if (!best) throw new Error("nothing fastens the joint");
  return best;
}

describe("pocket screws", () => {
  // Screw by the thickness of the drilled part: common practice, no source.
  it.each([
    ["1/2", 1],
    ["3/4", 1.25],
    ["1 1/2", 2.5],
  ])("in %s stock are %f in long", (thick, length) => {
    const { fasteners } = first(frame(poplar(thick), "2", "with: pocket screws"));
    expect(toInches(fasteners[0]?.length ?? inches(0))).toBe(length);
  });

  // One under 1 1/4 in, two from 1 1/2 in in 3/4 in stock, then one more for each 2 to 3 in: common practice, no source.
  it.each([
    ["1", 1],
    ["1 1/2", 2],
    ["2 1/4", 2],
    ["4 1/4", 2],
    ["7", 3],
  ])("across a rail %s wide are %i", (wide, count) => {
    expect(first(frame(poplar("3/4"), wide, "with: pocket screws")).fasteners).toHaveLength(count);
  });

  it("bite by (L − s) cos 15°: 0.604 in for 1 1/4 in screws with the shoulder at half (derived by geometry)", () => {
    const { fasteners } = first(frame(poplar("3/4"), "2", "with: pocket screws"));
    const [screw] = fasteners;
    if (!screw) throw new Error("no screw");
    // The left end of the rail lies at 1 1/2 in; the screw runs to the left.
    const point = toInches(screw.head.at[0]) + toInches(screw.length) * screw.direction[0];
    expect(1.5 - point).toBeCloseTo((1.25 - 0.625) * Math.cos(Math.PI / 12), 6);
    expect(1.5 - point).toBeCloseTo(0.604, 3);
  });

  it("leave the end of the rail at mid-thickness, 15 degrees to its face", () => {
    const [screw] = first(frame(poplar("3/4"), "2", "with: pocket screws")).fasteners;
    if (!screw) throw new Error("no screw");
    const run = (toInches(screw.head.at[0]) - 1.5) / -screw.direction[0];
    const depth = toInches(screw.head.at[1]) + run * screw.direction[1];
    expect(depth).toBeCloseTo(0.25 + 0.375, 6);
    expect((Math.acos(Math.abs(screw.direction[0])) * 180) / Math.PI).toBeCloseTo(15, 6);
  });
});

describe("wood screws", () => {
  // D = 0.060 + 0.013 × gauge (from memory; it fits the published 0.138, 0.164, 0.190 and 0.216 in of #6, #8, #10 and #12).
  it.each([
    [6, 0.138],
    [8, 0.164],
    [10, 0.19],
    [12, 0.216],
  ])("#%i is %f in thick", (gauge, thick) => {
    expect(toInches(INCH_SCREWS.find((screw) => screw.gauge === gauge)?.shank ?? inches(0))).toBeCloseTo(thick, 9);
  });

  it("have clearance holes that let the shank through, and pilots thinner than it, no thinner in hardwood", () => {
    for (const { shank, clearance, pilot, head } of [...INCH_SCREWS, ...METRIC_SCREWS]) {
      expect(compare(clearance, shank)).toBeGreaterThanOrEqual(0);
      expect(compare(pilot.hardwood, shank)).toBe(-1);
      expect(compare(pilot.softwood, pilot.hardwood)).toBeLessThanOrEqual(0);
      expect(compare(head, clearance)).toBe(1);
    }
  });

  it("go through the part under the head and stop short of the far side of the other", () => {
    const text = frame(poplar("3/4"), "3", "with: screws, from: left-stile, screw: { gauge: 8 }");
    const { fasteners, holes } = first(text);
    for (const { length, head } of fasteners) {
      expect(toInches(head.at[0])).toBe(0);
      expect(toInches(length)).toBeGreaterThan(1.5);
      expect(toInches(length)).toBeLessThanOrEqual(3);
    }
    const pilots = holes.filter((hole) => hole.kind === "pilot");
    expect(pilots).toHaveLength(fasteners.length);
    for (const [i, { stages }] of pilots.entries())
      expect(toInches(stages[0]?.depth ?? inches(0))).toBe(toInches(fasteners[i]?.length ?? inches(0)) - 1.5);
  });
});

describe("dowels", () => {
  it("lie half in each part, their holes together 1/8 in deeper (common practice, no source)", () => {
    const { fasteners, holes } = first(frame(poplar("3/4"), "3", "with: dowels"));
    const [dowel] = fasteners;
    const depths = holes
      .filter((hole) => hole.for === dowel?.id)
      .map(({ stages }) => toInches(stages[0]?.depth ?? inches(0)));
    expect(depths.reduce((a, b) => a + b, 0)).toBeCloseTo(toInches(dowel?.length ?? inches(0)) + 1 / 8, 9);
    expect(toMillimetres(dowel?.rod ?? inches(0))).toBeCloseTo(9.525, 9);
    expect(toNumber(dowel?.head.at[0] ?? inches(0))).toBe(
      toNumber(inches(3, 2)) + toNumber(dowel?.length ?? inches(0)) / 2,
    );
  });
});

describe("tenons", () => {
  // A third of the wood to a cutter that exists, the mortise 1/16 in deeper: common practice, no source.
  it.each([
    ["3/4", 0.25],
    ["1", 0.3125],
    ["1 1/4", 0.375],
  ])("in %s stock are %f in thick", (thick, tenon) => {
    const { parts } = soundDesign(frame(poplar(thick), "3", "with: mortise and tenon"));
    const feature = parts.find(({ id }) => id === "rail")?.features.find(({ kind }) => kind === "tenon");
    const mortise = parts.find(({ id }) => id === "left-stile")?.features.find(({ kind }) => kind === "mortise");
    if (!feature || !("size" in feature) || !mortise || !("size" in mortise)) throw new Error("no joint");
    expect(toInches(feature.size[1])).toBe(tenon);
    expect(toInches(mortise.size[2]) - toInches(feature.size[2])).toBeCloseTo(1 / 16, 9);
  });
});
