import { describe, expect, it } from "vitest";
import { UNITS_PER_MM } from "../../../../src/units/length.ts";
import { toNumber } from "../../../../src/units/rational.ts";
import { auditOf, said, solveText } from "../../../examples/compiled.ts";

/** A case of pine, 24 wide, 12 deep, 18 high, without a door: hardware goes on it. */
const plan = (hardware: string, fittings: string, bottom = "0"): string => `plan: 1
title: Case with hardware
units: inch
stock:
  pine: { sold as: 1x12, wood: pine }
hardware:
${hardware}
piece:
  left-side: { made of: pine, as: upright, facing: left, left: 0, front: 0, bottom: ${bottom}, top: ${bottom} + 18 }
  right-side: { like: left-side, right: 24 }
  lid: { made of: pine, as: lying flat, grain: across, left: 0, right: 24, front: 0, bottom: ${bottom} + 18 }
  shelf: { made of: pine, as: lying flat, grain: across, between: [left-side, right-side], front: 0, bottom: ${bottom} + 1 }
joints:
  - { join: lid, to: [left-side, right-side], with: screws }
  - { join: shelf, to: [left-side, right-side], with: screws, from: left-side }
fittings:
${fittings}
`;

const mm = (value: Parameters<typeof toNumber>[0]): number =>
  Math.round((toNumber(value) / UNITS_PER_MM) * 1000) / 1000;

/** The build of a plan without violations in its record. */
function built(hardware: string, fittings: string, bottom?: string) {
  const text = plan(hardware, fittings, bottom);
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  expect(auditOf(text, build)).toEqual([]);
  return build;
}

describe("kinds of hardware", () => {
  it("a pull has two holes right through, as far apart as its centres say", () => {
    const build = built(
      "  bar: { kind: pull, centres: 3, screw: 1 }",
      "  - { fit: bar, to: lid, face: top, along: across }",
    );
    const holes = build.holes.filter(({ kind }) => kind === "knob");
    expect(holes.map(({ at }) => mm(at[0]))).toEqual([266.7, 342.9]);
    expect(holes.every(({ through }) => through)).toBe(true);
    const [step] = build.steps.filter(({ unit }) => unit === "fit pull");
    expect(step?.text.join(" ")).toContain("Start both screws by hand");
  });
  it("casters hold the piece up by their height, with four screws each", () => {
    const build = built(
      "  wheel: { kind: caster, high: 2 1/2, wheel: 2 }",
      "  - { fit: wheel, to: shelf, count: 2, deep: 2 }",
      "1 1/2",
    );
    const wheels = build.hardware.filter(({ item }) => item.kind === "caster");
    // Each stands in the middle of its half of a shelf that is 22 1/2 long and begins at 3/4.
    expect(wheels.map(({ at }) => mm(at[0]))).toEqual(
      [6.375 * 25.4, 17.625 * 25.4].map((x) => Math.round(x * 1000) / 1000),
    );
    expect(build.holes.filter((hole) => hole.for === wheels[0]?.id)).toHaveLength(4);
  });
  it.each([
    ["foot", "2", 1],
    ["leveller", "1/2", 1],
    ["bumper", "1/16", 0],
  ] as const)("a %s is put under a side", (kind, high, n) => {
    const build = built(
      `  it: { kind: ${kind} }`,
      "  - { fit: it, to: [left-side, right-side], face: bottom, deep: 2 }",
      high,
    );
    const own = build.hardware.filter(({ item }) => item.kind === kind);
    expect(own).toHaveLength(2);
    expect(build.holes.filter((hole) => own.some(({ id }) => id === hole.for))).toHaveLength(2 * n);
  });
  it("a stop, a wall strap and wall screws are screwed on", () => {
    const build = built(
      "  block: { kind: stop, thick: 1/2, screw: 1 }\n  strap: { kind: wall strap }\n  stud: { kind: wall screw, length: 15 }",
      "  - { fit: block, to: left-side, against: right-side }\n  - { fit: strap, to: lid }\n  - { fit: stud, to: lid, face: back, count: 2 }",
    );
    expect(build.hardware.map(({ item }) => item.kind)).toEqual(["stop", "wall strap", "wall screw", "wall screw"]);
    // 1 in of screw less the 1/2 in of the block.
    const pilot = build.holes.find((hole) => hole.for === "left-side.block.1");
    expect(mm(pilot?.stages[0]?.depth as never)).toBe(12.7);
    expect(build.steps.filter(({ kind }) => kind === "fit").map(({ unit }) => unit)).toEqual([
      "fit stop",
      "fit wall strap",
      "fit wall screw",
    ]);
  });
  it("a catch stands a strike's thickness behind the door, and the strike opposite it on the door", () => {
    const { build, findings } = solveText(`plan: 1
title: Box for the first-aid kit
units: inch
stock:
  pine: { sold as: 1x12, wood: pine }
hardware:
  magnet: { kind: catch, reach: 5/8, strike: 1/16, high: 1/2 }
piece:
  left-side: { made of: pine, as: upright, facing: left, left: 0, front: 0, bottom: 0, top: 18 }
  right-side: { like: left-side, right: 24 }
  lid: { made of: pine, as: lying flat, grain: across, left: 0, right: 24, front: 0, bottom: 18 }
  door: { made of: pine, as: on edge, facing: front, left: 3/4, right: 23 1/4, front: 0, bottom: 6 }
joints:
  - { join: lid, to: [left-side, right-side], with: screws }
  - { join: door, to: [left-side, right-side], with: screws, from: left-side }
fittings:
  - { fit: magnet, to: left-side, against: door, up: 12 }
`);
    if (!build) throw new Error(said(findings).join("\n"));
    const [body, strike] = build.hardware;
    // The door's inside is 3/4 from the front; then strike 1/16 and half of the body, 5/16: 1 1/8.
    expect(body?.at.map(mm)).toEqual([19.05, 28.575, 304.8]);
    expect([strike?.carriedBy, strike?.halfOf]).toEqual(["door", body?.id]);
    expect(mm(strike?.at[1] as never)).toBe(19.05);
    expect(build.purchases.filter(({ section }) => section === "hardware").map(({ quantity }) => quantity)).toEqual([
      1,
    ]);
  });
});
