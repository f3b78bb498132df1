import { describe, expect, test } from "vitest";
import { block } from "../../../src/render/typeset/atom.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import type { FlowAtom } from "../../../src/render/typeset/sheet.ts";
import { frame } from "./units.ts";

const box = (height: number): FlowAtom => block(height, () => []);
const section = (atoms: readonly FlowAtom[]) => ({ name: "a", title: "a", kind: "a", start: "fits" as const, atoms });

describe("drawings that can be lower", () => {
  /** As low as it is asked, and no lower than a half. */
  const drawing = (height: number, least = height / 2): FlowAtom => ({
    ...box(height),
    lower: (most) => (most < least ? null : box(most - (most % 4))),
  });
  const pagesOf = (...atoms: readonly FlowAtom[]): number => flow([section(atoms)], frame).length;
  test("all of a page are, for one more on it, where that saves a page", () => {
    // 500 in 400: each to 0.8 of its height. One that cannot be lower leaves 0.75 to the others.
    expect(pagesOf(drawing(300), drawing(200))).toBe(1);
    expect(pagesOf(drawing(200), box(100), drawing(200))).toBe(1);
    expect(pagesOf(drawing(300), drawing(100, 100), drawing(100))).toBe(1);
  });
  test("none is much lower, and none for nothing", () => {
    expect(pagesOf(drawing(300), drawing(280))).toBe(2);
    const heights: number[] = [];
    const painted = (height: number): FlowAtom => ({
      ...block(height, () => {
        heights.push(height);
        return [];
      }),
      lower: (most) => painted(most),
    });
    flow([section([painted(300), painted(300), painted(300)])], frame);
    expect(heights).toEqual([300, 300, 300]);
  });
});
