import { describe, expect, it } from "vitest";
import { bill, exampleText, soundDesign } from "../solve/design/plan.ts";

/**
 * Bills of material printed in H. H. Windsor, "Mission Furniture: How to Make It", Popular Mechanics Co., Chicago (public domain).
 * Lines of equal size are added up first.
 */
describe("old plans", () => {
  it("plant stand: part I, 1909, page 109", () => {
    expect(bill(soundDesign(exampleText("old-plans/plant-stand")))).toEqual(
      new Map([
        ["3/4 × 15 1/2 × 15 1/2", 1],
        ["1 1/4 × 1 1/4 × 20", 4],
        ["3/4 × 3 × 11", 4],
        ["3/4 × 2 × 11", 2],
        ["3/4 × 6 × 10", 1],
        ["1/4 × 2 × 12 1/4", 4],
        ["1/4 × 2 × 12 3/4", 2],
      ]),
    );
  });

  it("medicine cabinet without its door: part two, 1910, page 116", () => {
    expect(bill(soundDesign(exampleText("old-plans/medicine-cabinet")))).toEqual(
      new Map([
        ["1 1/2 × 1 1/2 × 28", 4],
        // 4 side rails and, below, 4 end rails
        ["3/4 × 2 × 16", 4],
        ["3/4 × 2 × 7", 4],
        ["1/4 × 15 1/2 × 23 1/4", 1],
        ["1/4 × 6 1/2 × 23 1/4", 2],
        ["1/2 × 6 3/4 × 15 3/4", 2],
      ]),
    );
  });

  it("plant stand: outside size read off the drawing, 15 1/2 × 15 1/2 × 20 3/4", () => {
    const { sizes } = soundDesign(exampleText("old-plans/plant-stand"));
    const inches = (name: string): number => Number(sizes.get(name)?.n) / Number(sizes.get(name)?.d) / 406_400;
    expect(["width", "depth", "height"].map(inches)).toEqual([15.5, 15.5, 20.75]);
  });

  it("plant stand: its source is short", () => {
    expect(exampleText("old-plans/plant-stand").split("\n").length).toBeLessThan(110);
  });
});
