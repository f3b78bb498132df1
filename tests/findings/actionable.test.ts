/** Findings about what assemblies make: they stand at the setting that made it, and what they advise can be written. */
import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/findings/finding.ts";
import { holeRunsIntoCut } from "../../src/findings/rules/hole-runs-into-cut.ts";
import { solveText } from "../examples/compiled.ts";
import { designOf } from "../solve/design/plan.ts";

const BOX = `plan: 1
title: Box for the drill bits
units: inch
outside: { width: 24, depth: 14, height: 30 }
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
  half: { sold as: 1/2 birch plywood, measures: 15/32 }
  thin: { sold as: 1/4 birch plywood, measures: 0.2 in }
hardware:
  knob: { kind: knob }
piece:
  cabinet:
    kind: case
    made of: ply
    bottom panel: { up: 3/4 }
    back: thin
    openings:
      down:
        - { high: 6, drawer: { made of: half, front: ply, bottom: thin, pull: knob } }
        - { high: the rest, name: below, shelves: 1 }
`;
const TABLE = `plan: 1
title: Table for the saw
units: inch
outside: { width: 40, depth: 14, height: 32 }
stock:
  legs: { sold as: 8/4, wood: cherry, planed to: 1 3/4, widths: 4 to 8 }
  cherry: { sold as: 4/4, wood: cherry, planed to: 3/4, widths: 5 to 8 }
piece:
  table-top: { kind: top, made of: cherry, boards: 3, on: frame, fasten: buttons in a groove }
  frame:
    kind: table
    legs: { made of: legs, square: 1 3/4 }
    aprons: { made of: cherry, wide: 6 }
    stretchers: { made of: cherry, wide: 1 1/2, up: 6 }
    lower shelf: { made of: cherry, boards: 2, join: slotted screws }
`;

const NOWHERE = { start: 0, end: 1, line: 1, column: 1 };

const change = (text: string, ...changes: readonly (readonly [string, string])[]): string =>
  changes.reduce((so, [from, to]) => {
    expect(so).toContain(from);
    return so.replace(from, to);
  }, text);

/** The rule, the text that the finding points to with its line, and its advice. */
const told = (text: string, findings: readonly Finding[]) =>
  findings.map(({ rule, at, message, help = "" }) => ({
    ...{ rule, message, help, line: text.split("\n")[at.line - 1]?.trim() ?? "" },
    points: text.slice(at.start, at.end),
  }));
const toldOf = (text: string) => told(text, designOf(text).findings);

test("the plans below are sound", () => {
  expect(toldOf(BOX)).toEqual([]);
  expect(toldOf(TABLE)).toEqual([]);
});

describe("a finding points to the setting from which its part was made", () => {
  test.each([
    ["an opening without room", ["high: 6,", "high: 28,"], "no-room", "high", "- { high: the rest"],
    ["a drawer without room", ["high: 6,", "high: 1,"], "no-room", "drawer", "- { high: 1,"],
    [
      "a shelf that overlaps another",
      ["shelves: 1", "shelves: { at: [5, 5 1/4] }"],
      "parts-overlap",
      "at",
      "- { high: the",
    ],
  ] as const)("%s", (_, [from, to], rule, points, line) => {
    const [first] = toldOf(change(BOX, [from, to])).filter((each) => each.rule === rule);
    expect(first).toMatchObject({ rule, points });
    expect(first?.help).toMatch(/settings/);
    expect(first?.line).toContain(line);
  });
  test("legs, stretchers and shelf of a table each to their own", () => {
    const [first] = toldOf(change(TABLE, ["up: 6 }", "up: 26 }"]));
    expect(first).toMatchObject({ rule: "parts-overlap", points: "stretchers" });
  });
});

describe("a size of nothing is told at the size", () => {
  test.each([
    ["width: 24", "width: 0", "0", "write a measure above zero"],
    ["high: 6,", "high: 0,", "0", "write a measure above zero, or `the rest`"],
    ["high: 6,", "high: -6,", "-6", "write a measure above zero, or `the rest`"],
    ["made of: half, ", "made of: half, high: 0, ", "0", "write a measure above zero"],
  ])("%s → %s", (from, to, points, help) => {
    expect(toldOf(change(BOX, [from, to]))).toMatchObject([{ rule: "size-not-positive", points, help }]);
  });
});

test("of two that stand on one another, the circle says which word to leave out", () => {
  const text = change(TABLE, ["kind: table", "kind: table\n    under: table-top"]);
  expect(toldOf(text)).toMatchObject([
    { rule: "circle", help: expect.stringContaining("leave one of these out: `on` of table-top or `under` of frame") },
  ]);
});

describe("where an assembly joins its own parts, its settings are advised", () => {
  test.each(["3/8", "3/4", "1"])("a groove %s in from the back lies within a back rail", (inFrom) => {
    const text = change(BOX, [
      "back: thin",
      `back: { made of: thin, in: groove, in from the back: ${inFrom} }\n    back rails: { where: top }`,
    ]);
    expect(toldOf(text)).toEqual([]);
  });
  test("a joint that does not meet", () => {
    const [first] = toldOf(change(BOX, ["high: 6,", "high: 40,"])).filter(
      (each) => each.rule === "joint-does-not-touch",
    );
    expect(first?.help).toMatch(/^both are made by the settings of `cabinet`: change the setting here/);
  });
  test("a divider under two top rails is joined to both", () => {
    const text = change(
      BOX,
      ["made of: ply\n", "made of: ply\n    top panel: rails\n"],
      [
        "- { high: 6, drawer: { made of: half, front: ply, bottom: thin, pull: knob } }",
        "- { high: 6, across: [equal, equal] }",
      ],
    );
    const { value, findings } = designOf(text);
    expect(findings).toEqual([]);
    const mates = value?.joints
      .filter(({ parts }) => parts[0] === "cabinet.opening-1-divider-1")
      .map(({ parts }) => parts[1]);
    expect(mates).toEqual(expect.arrayContaining(["cabinet.top-rail-front", "cabinet.top-rail-back"]));
  });
});

test("a group that stands loose is told by its name, with the joint to write", () => {
  const text = change(TABLE, [
    "piece:\n",
    "piece:\n  crate: { kind: box, made of: cherry, boards: 2, on: frame.lower-shelf, left: 10, across: 12, front: 3, deep: 8, high: 5 }\n",
  ]);
  expect(toldOf(text)).toMatchObject([
    {
      rule: "part-floats",
      message: "the 5 parts of `crate` are joined to each other but not to the rest",
      help: expect.stringContaining("`- { join: crate.bottom-panel, to: frame.lower-shelf, with: screws }`"),
    },
  ]);
});

describe("a hole in a cut: which hole, and which cut", () => {
  test("that was drawn by the maker", () => {
    const [first] = solveText(holeRunsIntoCut.wrong ?? "").findings.filter(({ rule }) => rule === "hole-runs-into-cut");
    // The hole is drawn 12 in from the left, the groove from end to end.
    expect(first?.message).toMatch(/ hole in tread 12 in from its left end runs into a groove$/);
    expect(first?.help).toBe("the groove runs along the whole part there: move the hole or the groove sideways");
  });
  test("that is of a joint", () => {
    const spot = {
      from: "12 in",
      end: "left",
      holds: "rail",
      cutFor: "divider",
      cut: ["11 1/2 in", "12 1/4 in"] as const,
    };
    const { message, help } = holeRunsIntoCut(NOWHERE, { part: "shelf", hole: "clearance", cut: "dado", spot });
    expect(message).toBe(
      "the clearance hole in shelf 12 in from its left end, for rail, runs into the dado for divider",
    );
    expect(help).toBe(
      "give its joint with rail another `count`, or `in from ends`, so that none lies between 11 1/2 in and 12 1/4 in from that end; or move the dado",
    );
  });
});

describe("boards of one width", () => {
  const boards = (stock: string) =>
    change(
      BOX,
      ["ply: { sold as: 3/4 birch plywood, measures: 23/32 }", `ply: { sold as: 1x10, wood: pine, ${stock} }`],
      ["depth: 14", "depth: 8"],
      ["{ high: 6, drawer: { made of: half, front: ply, bottom: thin, pull: knob } }", "{ high: 6 }"],
    );
  test("are ripped to what is narrower, and glued up for what is wider", () => {
    expect(toldOf(boards("measures: { thick: 3/4, wide: 9 1/4 }"))).toEqual([]);
    const [first] = toldOf(boards("measures: { thick: 3/4, wide: 7 1/4 }"));
    expect(first).toMatchObject({ rule: "glued-up", help: expect.stringContaining("boards: 2") });
  });
});

test("a tapered leg under a stretcher: how far the taper may reach", () => {
  const tapered = (taper: string) => change(TABLE, ["square: 1 3/4 }", `square: 1 3/4, taper: { to: 1, ${taper} } }`]);
  const [first] = toldOf(tapered("from: 1/2 below the aprons"));
  expect(first).toMatchObject({ rule: "shoulder-stands-open", points: "stretchers" });
  expect(first?.help).toContain("`over: 6` in its taper");
  expect(toldOf(tapered("over: 6"))).toEqual([]);
});

describe("a size that no tape has", () => {
  test.each([
    ["width: 24", "width: 24 3/5"],
    ["high: 6,", "high: 6 3/5,"],
    ["up: 3/4 }", "up: 3/5 }"],
  ])("%s → %s is told, once", (from, to) => {
    const found = toldOf(change(BOX, [from, to])).filter(({ rule }) => rule === "between-marks");
    expect(found).toMatchObject([{ points: to.split(": ")[1]?.replace(/[, }]+$/, "") }]);
  });
});

describe("numbers in the other unit", () => {
  test.each([
    ["units: inch", "units: mm", "30 mm: that looks like inches", "write `units: inch`"],
    ["width: 24", "width: 600", "600 in: that looks like millimetres", "write `units: mm`"],
  ])("%s → %s", (from, to, message, help) => {
    const found = toldOf(change(BOX, [from, to]));
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toContain(message);
    expect(found[0]?.help).toContain(help);
  });
  test("of a sheet, at the stock", () => {
    const found = toldOf(change(BOX, ["measures: 0.2 in", "measures: 5"]));
    expect(found).toMatchObject([
      { rule: "measures-not-its-name", points: "5", help: expect.stringContaining("`measures: 5 mm`") },
    ]);
  });
});

test("advice in the same words about several parts is told once, and shows where they are", () => {
  const { findings } = solveText(
    change(BOX, [
      "- { high: the rest, name: below, shelves: 1 }",
      "- { high: 7, drawer: { made of: half, front: ply, bottom: thin, pull: knob } }\n        - { high: the rest }",
    ]),
  );
  const grooves = findings.filter(({ rule }) => rule === "cutter-does-not-exist");
  expect(grooves.map(({ also }) => also.map(({ label }) => label))).toEqual([["the same here"]]);
});
