import { describe, expect, it } from "vitest";
import { inches, millimetres } from "../../../src/units/index.ts";
import { soundDesign } from "./plan.ts";

/** The same table in inches and in millimetres. 25.4 mm to the inch, exactly (yard and pound agreement of 1959). */
const table = (units: "inch" | "mm"): string => {
  const m = (inch: number): string => (units === "inch" ? `${inch}` : `${(inch * 254) / 10}`);
  return `plan: 1
title: Table
units: ${units}
kerf: ${m(0.125)}
${units === "inch" ? "" : "precision: 0.1\n"}outside: { width: ${m(24)}, depth: ${m(12)}, height: ${m(20)} }
sizes: { set-back: ${m(0.25)}, apron: ${m(3)} }
stock:
  legs: { wood: cherry, sold as: 8/4, planed to: { thick: ${m(1.5)}, wide: ${m(1.5)} } }
  boards: { wood: cherry, sold as: 5/4, planed to: ${m(1)}, widths: ${m(6)} to ${m(14)} }
piece:
  leg: { made of: legs, as: upright, left: 0, front: 0, bottom: 0, under: slab,
    taper: { faces: [right, back], at: bottom, to: ${m(1)}, over: ${m(12)} } }
  right-leg: { mirror of: leg, about: across }
  rail: { made of: boards, as: on edge, up: apron, between: [leg, right-leg], set back: set-back from leg.front, flush with: leg.top }
  slab: { made of: boards, as: lying flat, grain: across, left: 0, right: outside.right, front: 0, back: outside.back, top: outside.top }
joints:
  - { join: rail, to: [leg, right-leg], with: mortise and tenon, mortise: ${m(0.0625)} deeper,
      tenon: { thick: ${m(0.25)}, long: ${m(0.75)}, shoulder: ${m(0.25)} } }
  - { join: rail, to: slab, with: glue }
`;
};

describe("inches and millimetres", () => {
  const [inch, metric] = [soundDesign(table("inch")), soundDesign(table("mm"))];

  it("give the same bodies, blanks and cuts, exactly", () => {
    const shapes = ({ parts }: typeof inch) =>
      parts.map(({ id, body, blank, features, thickness, width, length }) => ({
        id,
        body,
        blank,
        features,
        sizes: [thickness, width, length],
      }));
    expect(shapes(metric)).toEqual(shapes(inch));
  });

  it("give the same joints", () => {
    const joints = ({ joints: all }: typeof inch) =>
      all.map(({ parts, contact, gap, insertion }) => ({ parts, contact, gap, insertion }));
    expect(joints(metric)).toEqual(joints(inch));
  });

  it("read a bare number in the plan's own unit, and both units in either", () => {
    const mixed = soundDesign(table("mm").replace("apron: 76.2", "apron: 3 in"));
    expect(mixed.sizes.get("apron")).toEqual(inches(3));
    expect(soundDesign(table("inch").replace("apron: 3", "apron: 76.2 mm")).sizes.get("apron")).toEqual(
      millimetres(762, 10),
    );
  });

  it("mirror a leg with its taper and its mortise", () => {
    const [left, right] = [inch.parts[0], inch.parts[1]];
    expect(right?.features.map(({ kind }) => kind)).toEqual(left?.features.map(({ kind }) => kind));
    expect(right?.solid.pieces.length).toBe(left?.solid.pieces.length);
  });
});
