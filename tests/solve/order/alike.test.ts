/** Work that repeats is told once and counted: drawers of several heights. */
import { describe, expect, it } from "vitest";
import { auditOf, said, solveText } from "../../examples/compiled.ts";

const drawer = "{ made of: walls, bottom: floor, slides: short, front: { made of: walls }, pull: knob }";
const text = `plan: 1
title: Drawers for nails
units: inch
outside: { width: 24, depth: 16, height: 18 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
  walls: { sold as: 1/2 birch plywood, measures: 15/32 }
  floor: { sold as: 1/4 birch plywood, measures: 7/32 }
hardware:
  short: { kind: side slide, length: 12, extension: three quarters }
  knob: { kind: knob, screw: 1 1/4 }
piece:
  cabinet:
    kind: case
    made of: panel
    join: screws
    openings:
      down:
        - { high: 4, name: drawer-1, drawer: ${drawer} }
        - divider
        - { high: 5, name: drawer-2, drawer: ${drawer} }
        - divider
        - { name: drawer-3, drawer: ${drawer} }
`;

describe("three drawers that differ in height", () => {
  const { build, findings } = solveText(text);
  const step = (title: RegExp) => build?.steps.find((each) => title.test(each.title));

  it("compile, and the record keeps its promises", () => {
    expect(said(findings).filter((each) => /error/.test(each))).toEqual([]);
    expect(build && auditOf(text, build)).toEqual([]);
  });
  it("are built in one step, which says what goes into each", () => {
    const made = step(/^Build the three drawers$/);
    expect(made?.copies).toBe(3);
    const list = made?.text.filter((each) => each.startsWith("– drawer ")) ?? [];
    expect(list.map((each) => each.slice(2, 10)).toSorted()).toEqual(["drawer 1", "drawer 2", "drawer 3"]);
    // Front, back and two sides of each are its own, the bottom is the same in all: 3 × 4 + 1.
    const marks = list.flatMap((each) => each.slice(12, -1).split(/, | and /u));
    expect(marks).toHaveLength(15);
    expect(new Set(marks).size).toBe(13);
  });
  it("go into the case in one step, and get their fronts in one", () => {
    const adds = (title: RegExp) => step(title)?.actions.filter(({ do: what }) => what === "add");
    expect(adds(/^Put in the three drawers$/)).toHaveLength(3);
    expect(adds(/^Screw on the .*false front/)).toHaveLength(3);
  });
  it("stay apart where the plan wishes one of them apart", () => {
    const apart = solveText(`${text}order:\n  - { in its own step: cabinet.drawer-1-drawer }\n`);
    const titles = apart.build?.steps.map(({ title }) => title) ?? [];
    expect(titles).toContain("Build the two drawers");
    expect(titles).toContain("Build drawer 1");
  });
});
