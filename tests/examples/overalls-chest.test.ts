import { describe, expect, it } from "vitest";
import { UNITS_PER_INCH } from "../../src/units/length.ts";
import { type Rational, toNumber } from "../../src/units/rational.ts";
import { said, solveText, textOf } from "./compiled.ts";

const inch = (length: Rational | undefined): number => (length ? toNumber(length) / UNITS_PER_INCH : Number.NaN);

/** Every figure worked out by hand from the sizes that the source says; the arithmetic stands beside it. */
describe("the overalls chest", () => {
  const { build, findings } = solveText(textOf("overalls-chest"));
  const part = (id: string) => build?.parts.find((each) => each.id === id);
  const size = (id: string, axis: 0 | 1 | 2): number =>
    inch(part(id)?.body.high[axis]) - inch(part(id)?.body.low[axis]);

  it("is said without a finding", () => {
    expect(said(findings)).toEqual([]);
  });
  it("has posts of 42 − 1 = 41, all of one section, thinner from 5 in up to the floor", () => {
    for (const id of ["left-side.front-post", "left-side.back-post", "right-side.front-post", "right-side.back-post"]) {
      expect([0, 1, 2].map((axis) => size(`chest.${id}`, axis as 0 | 1 | 2))).toEqual([1.75, 1.75, 41]);
      expect(part(`chest.${id}`)?.features.filter(({ kind }) => kind === "taper")).toHaveLength(2);
    }
  });
  it("is 34 − 2 × 3/4 = 32 1/2 wide under its top, 32 1/2 − 2 × 1 3/4 = 29 between the posts", () => {
    expect(
      inch(part("chest.right-side.front-post")?.body.high[0]) - inch(part("chest.left-side.front-post")?.body.low[0]),
    ).toBe(32.5);
    expect(size("chest.top-rail-front", 0)).toBe(29);
  });
  it("has panels of 24 − 3/4 − 23/32 − 2 × 1 3/4 = 19 1/32 by 41 − 5 = 36 between the posts", () => {
    expect(size("chest.left-side.panel", 1)).toBe(19 + 1 / 32);
    expect(size("chest.left-side.panel", 2)).toBe(36);
  });
  it("has fronts of 29 − 2 × 3/32 = 28 13/16, as high as a fifth of what is open, less a gap", () => {
    // From 5 23/32 to 41 − 3/4: 34 17/32; less 3/32, in five, 6.8875, down to 6 7/8; less 3/32.
    expect(size("chest.overalls-drawer-1.false-front", 0)).toBe(28 + 13 / 16);
    expect(size("chest.overalls-drawer-1.false-front", 2)).toBe(6 + 7 / 8 - 3 / 32);
  });
  it("has five drawers that run, the slides 12 in long, and all of them come off before it is finished", () => {
    expect(build?.motions.filter(({ kind }) => kind === "slide")).toHaveLength(5);
    const off = build?.steps.find(({ kind }) => kind === "take-off");
    expect(off?.actions.filter((action) => action.do === "remove")).toHaveLength(5);
    const finish = build?.steps.find(({ unit }) => unit.startsWith("finish"));
    expect(finish?.number).toBeGreaterThan(off?.number ?? Number.POSITIVE_INFINITY);
  });
  // ASTM F2057-23 asks for stability with drawers open and filled, under a pull of 10 lb, and under 60 lb on an open drawer.
  it("stands in every test of clothing storage, and is tied to the wall besides", () => {
    const tests = build?.checks.filter(({ rule }) => rule === "tips-over") ?? [];
    expect(tests.length).toBe(2 + 5);
    expect(tests.filter(({ value, verdict }) => value > 0 && verdict === "holds")).toHaveLength(7);
    expect(build?.hardware.filter(({ item, halfOf }) => item.kind === "wall strap" && !halfOf)).toHaveLength(2);
  });
  it("is taken to the wall last", () => {
    expect(build?.steps.at(-1)?.title).toMatch(/wall straps/);
  });
});
