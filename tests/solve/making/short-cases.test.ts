/** A case that says little: one opening, boards of one width, a door that says no more than its panel. */
import { describe, expect, test } from "vitest";
import { toNumber, UNITS_PER_MM } from "../../../src/units/index.ts";
import { auditOf, solveText } from "../../examples/compiled.ts";
import { built, plain, stepWith } from "./plans.ts";

const showcase = ({ depth = "6", more = "" } = {}): string => `plan: 1
title: Showcase for old planes
units: inch
outside: { width: 18, depth: ${depth}, height: 24 }
stock:
  pine: { sold as: 1x8, wood: eastern white pine }
  thin: { sold as: 1/4 hardboard }
  pane: { sold as: 1/8 glass, measures: 1/8, material: glass }
piece:
  case:
    kind: case
    made of: pine
    back: { made of: thin }
    shelves: 2
    openings: { door: { made of: pine, panel: pane, pull: knob } }
${more}`;

describe("a wall case with a glass door and boards that are 7 1/4 in wide (PS 20-20, table 3: nominal 8, dry)", () => {
  const text = showcase();
  const build = built(text);

  test("keeps the promises of its record", () => {
    expect(auditOf(text, build)).toEqual([]);
  });

  test("rips what is narrower than its boards, and rips nothing to more than they are", () => {
    const pine = build.cutList.filter(({ stock }) => stock === "pine");
    const widths = pine.map(({ width }) => toNumber(width) / UNITS_PER_MM / 25.4);
    expect(Math.max(...widths)).toBeLessThanOrEqual(7.25);
    expect(new Set(widths).size).toBeGreaterThan(3);
  });

  test("frames the panel, and sets the shelves behind the door", () => {
    expect(build.parts.map(({ id }) => id)).toContain("case.opening-1-door.left-stile");
    const front = (id: string): number => build.parts.find((part) => part.id === id)?.solid.low[1] ?? Number.NaN;
    expect(front("case.opening-1-shelf-1")).toBeGreaterThan(front("case.left-side"));
  });

  test("hangs the door without its pane, takes it off, and puts the pane in when all is sanded", () => {
    const titles = build.steps.map(({ title }) => plain(title));
    const glass = titles.findIndex((title) => /^Put in the pane \([A-Z]+\)$/.test(title));
    const sanded = titles.indexOf("Sand the piece");
    expect(sanded).toBeGreaterThan(titles.findIndex((title) => title.startsWith("Take off")));
    expect(glass).toBeGreaterThan(sanded);
    expect(plain(stepWith(build, "Put in the pane").text.join(" "))).toMatch(/lay the pane .*Lay two glass beads/);
    expect(titles.at(-1)).not.toMatch(/glass/);
  });
});

test("what is wider than its boards is glued up from as many as it takes, and says so", () => {
  const { build, findings } = solveText(showcase({ depth: "8" }));
  const told = findings.filter(({ rule }) => rule === "glued-up");
  expect(told.every(({ severity }) => severity === "advice")).toBe(true);
  expect(told.map(({ message }) => message).join()).toContain("is 8 in wide and is glued up from 2 boards");
  const side = build?.parts.find(({ id }) => id === "case.left-side");
  expect(side?.making?.boards).toBe(2);
  expect(build?.blanks.filter(({ part, why }) => part === "case.left-side" && why === "glue-up")).toHaveLength(2);
});

test("a drawer that stands by itself asks what its slides are screwed to", () => {
  const drawer = "  drawer: { kind: drawer, in: case.opening-1, made of: pine, bottom: thin }\n";
  const { findings } = solveText(showcase({ more: drawer }));
  expect(findings.map(({ message }) => message)).toContain("a drawer that stands by itself needs `walls`");
});
