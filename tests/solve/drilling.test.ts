import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { DrillRow, Hole } from "../../src/solve/build.ts";
import { toInches, toMillimetres } from "../../src/units/length.ts";
import { auditOf, built, said, solveText } from "../examples/compiled.ts";

/** A case 3/4 in thick with a shelf on pins of 5 mm, a lid that is screwed on, and a knob on a false front. */
const CASE = `plan: 1
title: Case on pins
units: inch
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 4 to 12 }
hardware:
  peg: { kind: shelf pin, across: 5 mm, long: 16 mm, deep: 8 mm }
  grip: { kind: knob, thread: 4 mm, screw: 1 }
piece:
  left-side: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 10, bottom: 0, up: 30 }
  right-side: { like: left-side, left: 24 }
  lid: { made of: wood, as: lying flat, left: 0, right: 24 3/4, front: 0, back: 10, bottom: left-side.top }
  base: { made of: wood, as: lying flat, between: [left-side, right-side], front: 0, back: 10, bottom: 0 }
  shelf: { made of: wood, as: lying flat, between: [left-side, right-side], front: 0, back: 10, bottom: 12 }
joints:
  - { join: lid, to: [left-side, right-side], with: screws, screw: { gauge: 8 } }
  - { join: base, to: [left-side, right-side], with: dowels }
  - { join: shelf, to: [left-side, right-side], with: shelf pins, hardware: peg }
fittings:
  - { fit: grip, to: lid, face: top }
`;

const solved = (() => {
  const { build, findings } = solveText(CASE);
  if (!build) throw new Error(said(findings).join("\n"));
  return build;
})();

const row = (what: RegExp): DrillRow => {
  const found = solved.drilling.filter((each) => what.test(each.what));
  expect(found, String(what)).toHaveLength(1);
  return found[0] as DrillRow;
};
const plain = (text: string): string => text.replaceAll("\u202f", " ").replaceAll("\u2044", "/");

describe("the drilling table", () => {
  it("keeps the promises of the record", () => expect(auditOf(CASE, solved)).toEqual([]));

  it("has every stage of every hole once, with the drill and the depth that the hole has, and of the lid 3/4 in thick what is passed before", () => {
    const told = solved.drilling.flatMap((each) => each.holes.map((i) => `${i} ${toMillimetres(each.diameter)}`));
    const bored = solved.holes.flatMap((hole, i) =>
      hole.stages.map(({ diameter }) => `${i} ${toMillimetres(diameter)}`),
    );
    expect(told.sort()).toEqual(bored.sort());
    for (const { holes, depth, diameter } of solved.drilling)
      for (const i of holes) {
        const stage = (solved.holes[i] as Hole).stages.find((each) => each.diameter === diameter);
        const passed = (solved.holes[i] as Hole).atBench ? 0 : 3 / 4;
        if (typeof depth !== "string" && stage) expect(toInches(stage.depth) + passed).toBeCloseTo(toInches(depth), 9);
      }
  });

  it("puts each drill in once, from thin to thick, the countersink last", () => {
    const drills = solved.drilling.filter(({ bit }) => bit === "drill").map(({ diameter }) => toMillimetres(diameter));
    expect(drills).toEqual([...drills].sort((a, b) => a - b));
    expect(solved.drilling.at(-1)?.bit).toBe("countersink");
  });

  it("names the side as the piece stands, scrap under what comes out, and the step", () => {
    const clearance = row(/^clearance for wood screw #8$/);
    expect(clearance).toMatchObject({ depth: "through", backing: "scrap", when: "before assembly" });
    expect(clearance.into).toEqual([{ mark: expect.any(String), parts: 1, side: "top face" }]);
    const pilot = row(/^pilot for wood screw #8/);
    expect(pilot).toMatchObject({ backing: null, when: "in place", what: "pilot for wood screw #8, in hardwood" });
    expect(pilot.into.every(({ side }) => side === "top end")).toBe(true);
    const step = (number: number | undefined) => solved.steps.find((each) => each.number === number);
    const machined = step(clearance.steps[0])?.actions.flatMap((each) => (each.do === "machine" ? each.holes : []));
    expect(machined).toEqual(expect.arrayContaining([...clearance.holes]));
    expect(step(pilot.steps[0])?.actions.some((each) => each.do === "drive")).toBe(true);
  });

  it("holds metric pins with their own drill; 8 mm is 10.08/32 in, the next mark 11/32", () => {
    const pins = row(/^shelf pin$/);
    expect([toMillimetres(pins.diameter), toInches(pins.depth as never)]).toEqual([5, 11 / 32]);
    const bits = plain(solved.tools.find(({ tool }) => tool.startsWith("Drill bits"))?.tool ?? "");
    expect(bits).toContain("5 mm");
    const sides = plain(solved.steps.flatMap(({ text }) => text).join(" "));
    expect(sides).toMatch(/shelf pin holes, 5 mm across, into the (right|left) face, 11\/32 in deep/);
  });

  it("lets a screw of 4 mm through with the next drill of an inch: 4.5 mm is 0.177, 3/16 is 0.1875", () => {
    const knob = row(/knob/);
    expect(toInches(knob.diameter)).toBe(3 / 16);
  });

  it("tells the depth of a pilot through a part, and where the stop is set for both", () => {
    const said = plain(solved.steps.flatMap(({ text }) => text).join(" "));
    const [, deep, stop] =
      /Through the holes that are there, drill [^,]*? pilot holes ([\d /]+) in deep into [^:]*: set the stop ([\d /]+) in from the tip/.exec(
        said,
      ) ?? [];
    const inches = (text = ""): number =>
      text
        .split(" ")
        .reduce(
          (so, each) =>
            so + (each.includes("/") ? Number(each.split("/")[0]) / Number(each.split("/")[1]) : Number(each)),
          0,
        );
    expect(inches(stop) - inches(deep)).toBeCloseTo(3 / 4, 9);
  });

  it("counts in the stop what stands under the head of a button's screw, which the bit goes through too", () => {
    const table = readFileSync(new URL("./design/plans/hall-table.yaml", import.meta.url), "utf8");
    const { build, findings } = solveText(table);
    if (!build) throw new Error(said(findings).join("\n"));
    const screws = build.fasteners.filter(({ with: own = [] }) => own.some((item) => item.startsWith("wooden button")));
    const [screw] = screws;
    const rows = build.drilling.filter(
      ({ holes, bit }) => bit === "drill" && holes.some((i) => build.holes[i]?.for === screw?.id),
    );
    // The bit comes out as far from the head as the screw is long.
    expect(rows.map(({ depth }) => (typeof depth === "string" ? depth : toMillimetres(depth)))).toEqual([
      toMillimetres(screw?.length as never),
    ]);
    const told = build.steps
      .flatMap(({ text }) => text.map(plain))
      .filter((each) => /^Through the holes of the wooden button/u.test(each));
    expect(told.length).toBeGreaterThan(0);
    for (const each of told)
      expect(each).toContain(`: set the stop ${toMillimetres(screw?.length as never)} mm from the tip`);
  });

  it("sets every stop to a mark of 1/32 in", () => {
    const stops = solved.drilling.flatMap(({ depth }) => (typeof depth === "string" ? [] : [toInches(depth) * 32]));
    expect(stops.length).toBeGreaterThan(2);
    for (const stop of stops) expect(stop).toBeCloseTo(Math.round(stop), 9);
  });
});

it("holes of a cabinet that stands together, for what ties it to its wall, are bored on the bench before the finish, over scrap", () => {
  const { drilling, steps } = built("old-plans/medicine-cabinet");
  const [wall, ...others] = drilling.filter(({ what }) => what === "hole for wall screw");
  expect(others).toEqual([]);
  expect(wall).toMatchObject({ when: "on the bench", backing: "scrap" });
  const [number] = wall?.steps ?? [];
  expect(steps.find((step) => step.number === number)?.title).toMatch(/^Sand the rest of the piece/);
});

describe("the table of fasteners", () => {
  it("counts each once, from short to long, with the step in which it is driven or put in", () => {
    const ids = solved.fastenerTable.flatMap(({ fasteners }) => fasteners);
    expect([...ids].sort()).toEqual(solved.fasteners.map(({ id }) => id).sort());
    for (const { fasteners, ways, steps } of solved.fastenerTable) {
      expect(ways.reduce((so, { count }) => so + count, 0)).toBe(fasteners.length);
      expect(steps.length).toBeGreaterThan(0);
    }
    const screws = solved.fastenerTable.find(({ kind }) => kind === "wood screw");
    const driving = solved.steps.filter(({ actions }) =>
      actions.some((each) => each.do === "drive" && each.fasteners.some((id) => screws?.fasteners.includes(id))),
    );
    expect(screws?.steps).toEqual(driving.map(({ number }) => number));
  });
});
