import { describe, expect, it } from "vitest";
import { expandSource } from "../../src/compile.ts";
import { UNITS_PER_INCH } from "../../src/units/length.ts";
import { type Rational, toNumber } from "../../src/units/rational.ts";
import { said, solveText, textOf } from "./compiled.ts";

const inch = (length: Rational | undefined): number => (length ? toNumber(length) / UNITS_PER_INCH : Number.NaN);

/** Every figure worked out by hand from the sizes that the source says; the arithmetic stands beside it. */
describe("the dining bench", () => {
  const text = textOf("dining-bench");
  const { build, findings } = solveText(text);
  const part = (id: string) => build?.parts.find((each) => each.id === id);
  const size = (id: string, axis: 0 | 1 | 2): number =>
    inch(part(id)?.body.high[axis]) - inch(part(id)?.body.low[axis]);
  const line = (id: string) => build?.cutList.find((each) => each.parts.includes(id));

  it("is said in under 50 lines, without a finding", () => {
    const lines = text.split("\n").filter((each) => each.trim() !== "" && !each.trim().startsWith("#"));
    expect(lines.length).toBeLessThan(50);
    expect(said(findings)).toEqual([]);
  });
  it("has four legs, all one part: 17 3/4 − 1 1/4 = 16 1/2", () => {
    expect(line("frame.front-left-leg")?.parts.length).toBe(4);
    expect(inch(part("frame.front-left-leg")?.length)).toBe(16.5);
    expect(line("frame.front-left-leg")?.notes.join()).toMatch(/rough 2\s1⁄2/u);
  });
  it("stands over the legs 52 − 2 × 4 = 44 long and 14 − 2 × 1 = 12 deep", () => {
    expect(inch(part("frame.front-right-leg")?.body.high[0]) - inch(part("frame.front-left-leg")?.body.low[0])).toBe(
      44,
    );
    expect(inch(part("frame.back-left-leg")?.body.high[1]) - inch(part("frame.front-left-leg")?.body.low[1])).toBe(12);
  });
  it("has long aprons of 44 − 2 × 2 1/4 = 39 1/2, with tenons 39 1/2 + 2 × 1 1/4 = 42", () => {
    expect(size("frame.aprons.front-apron", 0)).toBe(39.5);
    expect(inch(part("frame.aprons.front-apron")?.length)).toBe(42);
  });
  it("has short aprons of 12 − 2 × 2 1/4 = 7 1/2, with tenons 10", () => {
    expect(size("frame.aprons.left-apron", 1)).toBe(7.5);
    expect(inch(part("frame.aprons.left-apron")?.length)).toBe(10);
  });
  it("has tenons 3 1/2 − 1/2 − 1/4 = 2 3/4 wide, their mortises 3/16 + (1 − 3/8)/2 = 1/2 in from the leg's outer face", () => {
    const mortises = part("frame.front-left-leg")?.features.flatMap((each) => (each.kind === "mortise" ? [each] : []));
    expect(mortises?.map(({ size: [along] }) => inch(along))).toEqual([2.75, 2.75]);
    const outer = part("frame.front-left-leg")?.body.low[1];
    const front = mortises?.find(({ into }) => into[0] !== 0);
    expect(inch(front?.origin[1]) - inch(outer)).toBe(0.5);
    expect(inch(front?.size[1])).toBe(0.375);
  });
  it("has mortises that just miss: 2 1/4 − 7/8 = 1 3/8 of wood, 1 1/4 + 1/16 = 1 5/16 of mortise", () => {
    const mortise = part("frame.front-left-leg")?.features.find(({ kind }) => kind === "mortise");
    expect(mortise && "size" in mortise ? inch(mortise.size[2]) : 0).toBe(1 + 5 / 16);
    expect(build?.checks.filter(({ rule }) => rule === "mortises-meet").map(({ verdict }) => verdict)).not.toContain(
      "fails",
    );
  });
  it("has a bearer of 12 − 2 × (3/16 + 1) = 9 5/8, cut 10 5/8", () => {
    expect(size("frame.bearer", 1)).toBe(9.625);
    expect(inch(part("frame.bearer")?.length)).toBe(10.625);
  });
  it("tapers over 16 1/2 − 3 1/2 − 1/2 = 12 1/2, (2 1/4 − 1 5/8) / 12 1/2 = 0.05, on two faces", () => {
    const tapers = part("frame.front-left-leg")?.features.flatMap((each) => ("normal" in each ? [each] : [])) ?? [];
    expect(tapers.length).toBe(2);
    for (const { origin, normal } of tapers) {
      expect(inch(origin[2])).toBe(12.5);
      const slope = Math.abs(normal[2]) / Math.max(Math.abs(normal[0]), Math.abs(normal[1]));
      expect(slope).toBeCloseTo(0.05, 9);
    }
  });
  it("is glued up from three boards: (14 + 1/2) / 3 up to 4 7/8, + 1/4 = 5 1/8, 53 long", () => {
    const boards = build?.blanks.filter((blank) => blank.part === "seat.slab") ?? [];
    expect(boards.map(({ width, length }) => [inch(width), inch(length)])).toEqual(Array(3).fill([5.125, 53]));
  });
  it("weighs 25.0 + 7.4 + 9.7 = 42 lb at 0.68 × 62.4 × 1.12 = 47.5 lb/ft³", () => {
    const pounds = build?.parts.reduce((sum, { mass }) => sum + mass, 0) ?? 0;
    expect(pounds / 0.45359237).toBeGreaterThan(41);
    expect(pounds / 0.45359237).toBeLessThan(42.5);
  });
  it("opens into a plan of the lower height with the same cut list", () => {
    const opened = expandSource({ name: "plan.yaml", bytes: new TextEncoder().encode(text) }, new Map());
    const again = solveText(opened.value ?? "");
    const lines = (from: typeof build) =>
      from?.cutList.map(({ mark, parts, width, length }) => [mark, parts, width, length]);
    expect(lines(again.build)).toEqual(lines(build));
  });
});
