import { describe, expect, it } from "vitest";
import { toInches } from "../../src/units/length.ts";
import { said, solveText, textOf } from "./compiled.ts";

/** Worked out by hand from the sizes that the source says; the arithmetic stands beside it. */
describe("the rope chest, in inches", () => {
  const text = textOf("rope-chest");
  const { build, findings } = solveText(text);
  const part = (id: string) => build?.parts.find((each) => each.id === id);
  const low = (id: string, axis: 0 | 1 | 2): number => toInches(part(id)?.body.low[axis] as never);
  const high = (id: string, axis: 0 | 1 | 2): number => toInches(part(id)?.body.high[axis] as never);
  const line = (id: string) => build?.cutList.find((each) => each.parts.includes(id));
  const size = (id: string) => [line(id)?.width, line(id)?.length].map((each) => toInches(each as never));
  const rules = (changed: string) => solveText(changed).findings.map(({ rule }) => rule);

  it("is said in under 60 lines, without a finding", () => {
    const lines = text.split("\n").filter((each) => each.trim() !== "" && !each.trim().startsWith("#"));
    expect(lines.length).toBeLessThan(60);
    expect(said(findings)).toEqual([]);
  });
  it.each([
    ["chest.front-panel", [16.75, 39], "21 − 3/4 lid − 1/2 air − 3 plinth; 40 − 2 × 1/2"],
    ["chest.left-side", [16.75, 19.5], "20 − 1/2 in front; fingers reach through"],
    ["chest.bottom-panel", [18.5, 38], "19 1/2 − 2 × 3/4 + 2 × 1/4; 39 − 1 1/2 + 1/2: in rabbets 1/4 deep"],
    ["plinth.front-board", [3, 36], "39 − 2 × 1 1/2"],
    ["plinth.left-board", [3, 15], "19 1/2 − 2 × 1 1/2 − 2 × 3/4"],
    ["lid.frame.left-stile", [3, 20], "the whole depth"],
    ["lid.frame.front-rail", [3, 36], "40 − 2 × 3 = 34, and tenons of 1"],
    ["lid.frame.panel", [34.375, 14.375], "34 + 2 × 1/4 − 2 × 1/16; 20 − 6 + 1/2 − 1/8"],
  ] as [string, number[], string][])("%s: %j, %s", (id, wanted) => {
    expect(size(id).toSorted((a, b) => a - b)).toEqual(wanted.toSorted((a, b) => a - b));
  });
  it("glues each side up from three boards: (16 3/4 + 1/2) / 3 = 5 3/4, + 1/4", () => {
    const boards = build?.blanks.filter((blank) => blank.part === "chest.front-panel") ?? [];
    expect(boards.map(({ width }) => toInches(width))).toEqual([6, 6, 6]);
  });
  it("has 1/2 of air between 3 + 16 3/4 = 19 3/4 and the lid, 21 − 3/4 = 20 1/4", () => {
    for (const side of ["front-panel", "back-panel", "left-side", "right-side"])
      expect([low(`chest.${side}`, 2), high(`chest.${side}`, 2)]).toEqual([3, 19.75]);
    expect(low("lid.frame.front-rail", 2)).toBe(20.25);
    expect(high("lid.frame.front-rail", 2)).toBe(21);
  });
  it("turns about pins in the middle of that gap, half of 1/4 behind the back, and opens wide", () => {
    const pins = build?.hardware.filter(({ item, halfOf }) => item.kind === "butt hinge" && !halfOf) ?? [];
    expect(pins.map(({ at }) => [toInches(at[1]), toInches(at[2])])).toEqual(Array(3).fill([20.125, 20]));
    expect(build?.motions.map(({ kind, range }) => [kind, range])).toEqual([["lift", 180]]);
  });
  it("is held: frame (2 × 20 + 2 × 34) × 3 × 3/4 = 243 in³ of red oak, panel 108 in³; 6 + 2 = 8 lb, and the support 12", () => {
    const pounds = (build?.parts ?? [])
      .filter(({ id }) => id.startsWith("lid."))
      .reduce((so, { mass }) => so + mass / 0.45359237, 0);
    // 0.63 × 62.4 × 1.12 = 44 lb/ft³ of red oak, less the grooves; birch plywood about 40 (from memory).
    expect(pounds).toBeGreaterThan(7.5);
    expect(pounds).toBeLessThan(8.7);
    const held = build?.checks.filter(({ rule }) => rule === "lid-not-held") ?? [];
    expect(held.map(({ verdict, value }) => [verdict, Math.round((value as number) / 0.045359237) / 10])).toEqual([
      ["holds", 12],
    ]);
    expect(((held[0]?.limit ?? 0) as number) / 0.45359237).toBeCloseTo(pounds, 3);
  });
  it("is told of when the support holds only open", () => {
    expect(rules(text.replace("every angle, carries", "open only, carries"))).toContain("lid-not-held");
  });
  it("is told of when the support is weak, and when the lid shuts tight", () => {
    const tight = text.replace(/^ +air gap.*\n/mu, "").replace(/^ +bumpers.*\n/mu, "");
    const found = rules(tight.replace("carries: 12 lb", "carries: 6 lb"));
    expect(found).toContain("lid-not-held");
    expect(found).toContain("chest-without-air");
  });
  it("is told of when hinges in the gap do not fill it: 1/2 − 1/8", () => {
    const found = solveText(text.replace(", fit: on the face", "")).findings;
    expect(found.find(({ rule }) => rule === "hinge-leaves-apart")?.message).toContain("3/8 in wider");
  });
});
