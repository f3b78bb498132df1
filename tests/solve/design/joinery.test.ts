import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance, volume } from "../../../src/geometry/index.ts";
import { fingerStops } from "../../../src/solve/design/joinery/fingers.ts";
import type { Design, Part } from "../../../src/solve/design.ts";
import { UNITS_PER_INCH, UNITS_PER_MM } from "../../../src/units/index.ts";
import { rational, subtract, toNumber } from "../../../src/units/rational.ts";
import { designOf, sizeOf, soundDesign } from "./plan.ts";

const planned = (name: string): string => readFileSync(new URL(`plans/${name}.yaml`, import.meta.url), "utf8");
const part = ({ parts }: Design, id: string): Part => parts.find((each) => each.id === id) as Part;
const inches3 = ({ solid }: Pick<Part, "solid">): number => toNumber(volume(solid)) / UNITS_PER_INCH ** 3;
const mm3 = ({ solid }: Pick<Part, "solid">): number => toNumber(volume(solid)) / UNITS_PER_MM ** 3;
const all = ({ parts }: Design, size: (part: Part) => number): number => parts.reduce((so, each) => so + size(each), 0);

/** The same plan with its joints made in another way. */
const withMethod = (name: string, method: string): Design =>
  soundDesign(planned(name).replace(/with: .* \}$/m, `with: ${method} }`));

describe("what is cut from one part is filled by the other: volumes worked out by hand", () => {
  it("mitre: each rail loses a half of both its corners", () => {
    const frame = withMethod("map-frame", "mitre");
    expect(inches3(part(frame, "front-rail"))).toBeCloseTo(20 * 2 * 0.75 - 2 * ((2 * 2) / 2) * 0.75, 9);
    expect(sizeOf(part(frame, "front-rail"))).toBe("3/4 × 2 × 20");
    expect(all(frame, inches3)).toBeCloseTo((20 * 16 - 16 * 12) * 0.75, 9);
  });
  it("splined mitre: a slot as long as the mitre, 3/8 + 1/32 deep, 1/4 wide, at both ends", () => {
    const rail = part(soundDesign(planned("map-frame")), "front-rail");
    expect(inches3(rail)).toBeCloseTo(27 - 2 * (2 * Math.SQRT2 * (13 / 32) * 0.25), 5);
  });
  it("keyed mitre: the keys fill their slots", () => {
    const tray = soundDesign(planned("nail-tray"));
    const keys = tray.joints.flatMap(({ arrangements }) => arrangements[0]?.fasteners ?? []);
    expect(keys).toHaveLength(8);
    const filled = keys.reduce((so, { body }) => so + (body ? inches3({ solid: body }) : 0), 0);
    expect(filled).toBeCloseTo(8 * ((0.75 * 0.75) / 2) * 0.125, 9);
    expect(all(tray, inches3) + filled).toBeCloseTo((14 * 10 - 13 * 9) * 4, 9);
  });
  it("dovetail: three tails, 1 3/4 at the end and 1 5/8 at the base", () => {
    const box = soundDesign(planned("dovetailed-box"));
    const tail = ((1.75 + 1.625) / 2) * 0.5 * 0.5;
    expect(inches3(part(box, "left-side"))).toBeCloseTo(8 * 6 * 0.5 + 2 * 3 * tail, 9);
    expect(all(box, inches3)).toBeCloseTo((16 * 9 - 15 * 8) * 6, 9);
  });
  it("half-blind dovetail: the front keeps 1/4 in over the tails", () => {
    const drawer = soundDesign(planned("half-blind-drawer"));
    // One tail for every 1 1/2 in: three, 1 1/12 at the end, less 1/14 on each side at the base; a mortise of 3/16 × 2 5/16 × 5/16.
    const tail = (13 / 12 - 1 / 14) * 0.5 * 0.5;
    const mortise = (3 / 16) * (37 / 16) * (5 / 16);
    expect(inches3(part(drawer, "front-board"))).toBeCloseTo(12 * 4 * 0.75 - 2 * 3 * tail - mortise, 9);
  });
  it("sliding dovetail: 3/4 at its end, 3/4 - 2 × 3/64 at its shoulder, 1/2 short of the front", () => {
    const shelves = soundDesign(planned("dovetailed-shelves").replace(", play: 1/64", ""));
    const tail = ((0.75 + (0.75 - 6 / 64)) / 2) * 0.375;
    expect(inches3(part(shelves, "shelf.1"))).toBeCloseTo(22.5 * 9 * 0.75 + 2 * tail * 8.5, 9);
    // The sill: 1/4 deep, 1 in 7, over its whole height; what it takes ends with it, 27 in below the top, and is open below.
    const sill = ((0.75 + (0.75 - 2 / 28)) / 2) * 0.25 * 3;
    expect(inches3(part(shelves, "sill"))).toBeCloseTo(22.5 * 3 * 0.75 + 2 * sill, 9);
    expect(inches3(part(shelves, "left-side"))).toBeCloseTo(30 * 9 * 0.75 - 3 * tail * 8.5 - sill, 9);
  });
  it("sliding dovetail: goes in from its open end, with the play that is asked for, and nothing that breaks", () => {
    const text = planned("dovetailed-shelves");
    const { joints, parts } = soundDesign(text);
    const [shelf, sill] = ["shelf.1", "sill"].map((id) => joints.find((joint) => joint.parts[0] === id));
    expect(shelf?.insertion).toEqual([0, -1, 0]);
    expect(sill?.insertion).toEqual([0, 0, 1]);
    const housing = parts[0]?.features.find(({ kind }) => kind === "dovetail housing");
    const wide = housing && "size" in housing ? toNumber(housing.size[1]) / UNITS_PER_INCH : 0;
    expect(wide).toBeCloseTo(0.75 + 1 / 64, 9);
    const said = (to: string) => designOf(text.replace("stopped: 1/2 from front", to)).findings.map(({ rule }) => rule);
    expect(said("stopped: 1/2 from top")).toContain("stop-not-along-housing");
    expect(said("slope: 1.9")).toContain("sliding-tail-too-thin");
  });
  it("box joint: seven fingers of 15 mm, four of them the joined part's", () => {
    const box = soundDesign(planned("seed-box"));
    expect(mm3(part(box, "front-side"))).toBeCloseTo(276 * 105 * 12 + 2 * 4 * 15 * 12 * 12, 6);
    expect(all(box, mm3)).toBeCloseTo((300 * 200 - 276 * 176) * 105, 6);
  });
  it("bridle: a slot of a third in the stile, the cheeks off the rail", () => {
    const gate = soundDesign(planned("gate"));
    expect(inches3(part(gate, "left-stile"))).toBeCloseTo(36 * 3.5 * 1.5 - 2 * 3.5 * 3.5 * 0.5, 9);
    expect(inches3(part(gate, "low-rail"))).toBeCloseTo(30 * 3.5 * 1.5 - 4 * 3.5 * 3.5 * 0.5, 9);
  });
  it("through tenon: as long as the seat is thick", () => {
    const stool = soundDesign(planned("wedged-stool"));
    expect(sizeOf(part(stool, "left-front-leg"), "mm")).toBe("40 × 40 × 320");
    expect(mm3(part(stool, "seat"))).toBeCloseTo(400 * 260 * 40 - 4 * 12 * 30 * 40, 6);
  });
  it("tongue and groove: the tongue is included, its groove 1/16 in deeper", () => {
    const wall = soundDesign(planned("board-wall"));
    expect(sizeOf(part(wall, "first-board"))).toBe("3/4 × 4 1/4 × 30");
    const [tongued, splined] = [0.25 * (5 / 16) * 30, 0.25 * (13 / 32) * 30];
    expect(inches3(part(wall, "second-board"))).toBeCloseTo(0.75 * 4 * 30 - tongued - splined, 9);
  });
  it("haunch: 1/2 in over the shoulder of 3/16, its room in the stile", () => {
    const frame = soundDesign(planned("pegged-frame"));
    expect(inches3(part(frame, "high-rail"))).toBeCloseTo(
      17 * 3.5 * 1.5 + 2 * (0.5 * 3.125 * 2 + 0.5 * (3 / 16) * 0.5),
      9,
    );
  });
});

describe("allowances and room", () => {
  it("a breadboard's groove is longer than its tongue by 1 1/2 % of the width at each end, up to a mark", () => {
    const top = soundDesign(planned("bench-top"));
    expect(sizeOf(part(top, "panel"))).toBe("1 1/4 × 20 × 44");
    const groove = part(top, "left-end").features[0];
    // 20 × 0.015 = 0.3, up to 5/16; the tongue is 20 − 2 × 1.
    expect(groove && "size" in groove && toNumber(groove.size[0]) / UNITS_PER_INCH).toBeCloseTo(18 + 2 * (5 / 16), 9);
    expect(top.joints.map(({ kind, glue }) => [kind, glue])).toEqual([
      ["floating", true],
      ["floating", true],
    ]);
    // A peg of 1/4, and 5/16 to either side.
    const holes = top.joints[0]?.arrangements[0]?.holes.filter(({ part: id }) => id === "panel") ?? [];
    expect(holes.map(({ slot }) => (slot ? toNumber(slot.length) / UNITS_PER_INCH : 0))).toEqual([0.875, 0, 0.875]);
  });
  it("the hole in a drawbored tenon is 1/16 in nearer to the shoulder", () => {
    const frame = soundDesign(planned("pegged-frame"));
    const holes = frame.joints[0]?.arrangements[0]?.holes ?? [];
    const at = (id: string) =>
      holes.filter((hole) => hole.part === id).map((hole) => toNumber(hole.at[0]) / UNITS_PER_INCH);
    expect(at("left-stile")).toEqual([3, 3]);
    expect(at("low-rail")).toEqual([3.0625, 3.0625]);
  });
  it("mitred tenons keep 1/16 in apart along the leg, which is 1.12 mm square across", () => {
    const table = soundDesign(planned("small-table"));
    const apart = distance(part(table, "front-rail").solid, part(table, "left-rail").solid) / UNITS_PER_MM;
    expect(apart).toBeCloseTo(25.4 / 16 / Math.SQRT2, 3);
  });
  it("what is measured from the end of a mitred tenon holds before its corner is cut off and after", () => {
    // From the shoulder 1 1/2 - 7/8 = 5/8 to the other's cheek, 1/4 along its end, less 1/32: 27/32, down to 13/16; 24 - 2 × 1 1/2 between.
    const rail = part(soundDesign(planned("small-table")), "front-rail");
    expect(sizeOf(rail)).toBe("3/4 × 3 × 22 5/8");
    const { low, high } = rail.solid;
    expect((high[0] - low[0]) / UNITS_PER_INCH).toBeCloseTo(22.625, 9);
  });
  it("fingers are odd in number, alike at both ends, and no end is a sliver", () => {
    const sizes = fc.tuple(fc.integer({ min: 10, max: 5000 }), fc.integer({ min: 10, max: 900 }));
    const check = fc.property(sizes, ([tall, finger]) => {
      const stops = fingerStops(rational(tall), rational(finger));
      expect(stops === null).toBe(tall < 2 * finger);
      const wide = (stops ?? []).map(([from, upTo]) => toNumber(subtract(upTo, from)));
      if (wide.length === 0) return;
      expect(wide.length % 2).toBe(1);
      expect(wide.reduce((a, b) => a + b, 0)).toBeCloseTo(tall, 6);
      expect(wide[0]).toBe(wide.at(-1));
      expect(wide[0]).toBeGreaterThanOrEqual(finger / 2);
      for (const inner of wide.slice(1, -1)) expect(inner).toBeCloseTo(finger, 9);
    });
    fc.assert(check, { numRuns: 200, seed: 1911 });
  });
  it("a joint that cannot be is told of, never thrown", () => {
    const said = (method: string) =>
      designOf(planned("gate").replace("with: bridle", `with: ${method}`)).findings.map(({ rule }) => rule);
    expect(said("box joint, finger: 3")).toContain("fingers-do-not-fit");
    expect(said("dovetail, tails: 9")).toContain("dovetail-does-not-fit");
    expect(said("splined mitre, spline: { thick: 1 }")).toContain("spline-does-not-fit");
  });
});

describe("a housing on the ledge of a notch", () => {
  const shelf = (method: string) => `plan: 1
title: Shelf on a ledge
units: inch
stock:
  wood: { wood: cherry, sold as: 5/4, planed to: 1, widths: 4 to 12 }
piece:
  side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 8, bottom: 0, top: 11, notch: { at: top front, wide: 6, deep: 4 } }
  step: { made of: wood, as: lying flat, grain: across, left: -2, right: 4, front: -1, back: 4, bottom: 5 }
joints:
  - { join: side, to: step, with: ${method} }
`;
  it("is told, and no joint is left out in silence", () => {
    const told = designOf(shelf("dado, deep: 3/8")).findings.map(({ rule }) => rule);
    expect(told).toEqual(["joint-wants-a-face"]);
  });
  it("is held by what needs no cut", () => {
    expect(soundDesign(shelf("glue")).joints).toHaveLength(1);
  });
});

describe("parts in one place", () => {
  const said = (text: string) =>
    designOf(text).findings.map(({ rule, message, help }) => [rule, message, help].join(": "));
  const stock = "  wood: { wood: cherry, sold as: 8/4, planed to: 1 1/2, widths: 2 to 12 }";
  it("are told as tenons that meet, where only these do", () => {
    const rail = (at: string) => `{ made of: wood, as: on edge, grain: across, ${at}, front: 0, bottom: 4, wide: 3 }`;
    const [told] = said(`plan: 1
title: Post
units: inch
stock:
${stock}
piece:
  post: { made of: wood, as: upright, facing: front, left: 0, right: 2, front: 0, bottom: 0, up: 12 }
  left-rail: ${rail("left: -10, right: 0")}
  right-rail: ${rail("left: 2, right: 12")}
joints:
  - { join: [left-rail, right-rail], to: post, with: mortise and tenon, tenon: { long: 1 1/4 } }
`);
    // Twice 1 1/4 in a post of 2.
    expect(told).toContain("what joints add to left-rail and right-rail, such as their tenons, runs into the other");
    expect(told).toContain("they overlap by 1/2 in");
    expect(told).toContain("let them in less far");
  });
  it("are told of the notch that was to make the room", () => {
    const [told] = said(`plan: 1
title: Notch
units: inch
stock:
${stock}
piece:
  post: { made of: wood, as: upright, facing: front, left: 0, right: 4, front: 0, bottom: 0, up: 12, notch: { at: left top, wide: 3, deep: 1 } }
  rail: { made of: wood, as: on edge, grain: across, left: -10, right: 1, front: 0, bottom: 9, wide: 3 }
joints:
  - { join: rail, to: post, with: glue }
`);
    expect(told).toContain("if the notch of post is to make the room");
  });
});
