import { describe, expect, test } from "vitest";
import { toInches, toMillimetres } from "../../src/units/length.ts";
import { subtract } from "../../src/units/rational.ts";
import { exampleText, soundDesign } from "../solve/design/plan.ts";

/** Every figure worked out by hand from the sizes that the source says, with plywood of 23/32; the arithmetic stands beside it. */
describe("the index cabinet", () => {
  const design = soundDesign(exampleText("index-cabinet"));
  const body = (id: string) => {
    const part = design.parts.find((each) => each.id === id);
    if (!part) throw new Error(`no part ${id}`);
    return part.body;
  };
  const from = (id: string, axis: 0 | 1 | 2): number => toInches(body(id).low[axis]);
  const to = (id: string, axis: 0 | 1 | 2): number => toInches(body(id).high[axis]);
  const middle = (id: string): number => (from(id, 0) + to(id, 0)) / 2;
  const stile = (i: 1 | 2): string => `face-frame.opening-1-stile-${i}`;
  const divider = (i: 1 | 2): string => `cabinet.opening-1-divider-${i}`;
  const drawers = ["tools", "members", "loans"].map((name) => `face-frame.${name}-drawer`);

  test("three openings of (36 − 2 × 1 7/16 − 2 × 2 1/8) / 3 = 9 5/8, and fronts 1/2 over each side", () => {
    // 3 × 23/32 lies between two marks: 2 1/8.
    expect([1, 2].map((i) => to(stile(i as 1), 0) - from(stile(i as 1), 0))).toEqual([2.125, 2.125]);
    expect(from(stile(1), 0) - to("face-frame.left-stile", 0)).toBe(9.625);
    expect(from(stile(2), 0) - to(stile(1), 0)).toBe(9.625);
    expect(from("face-frame.right-stile", 0) - to(stile(2), 0)).toBe(9.625);
    for (const drawer of drawers)
      expect(to(`${drawer}.false-front`, 0) - from(`${drawer}.false-front`, 0)).toBe(10.625);
  });

  test("what the slides of the middle drawer are screwed to stands behind the stiles, 12 1/8 from each end", () => {
    expect([middle(stile(1)), middle(divider(1))]).toEqual([12.125, 12.125]);
    expect([middle(stile(2)), middle(divider(2))]).toEqual([36 - 12.125, 36 - 12.125]);
    // The shelf that they stand on is level with the rail: 34 − 1 7/16 − 6 1/2. Up to the top panel at 34 − 23/32 it is 7 7/32, rounded down.
    expect([to("cabinet.divider-1", 2), to("face-frame.rail-1", 2)]).toEqual([26.0625, 26.0625]);
    expect(to(divider(1), 2) - from(divider(1), 2)).toBe(7.1875);
  });

  // Side space 12.9 to 13.2 mm on each side: a slide maker's technical note. Too wide by what is rounded down can be packed with card.
  test.each([0, 1, 2])("the box of drawer %i leaves its slides their room between the packings", (i) => {
    const drawer = drawers[i] as string;
    const room = (low: string, high: string): number => toMillimetres(subtract(body(high).low[0], body(low).high[0]));
    const sides = [
      room(`${drawer}.left-packing`, `${drawer}.left-side`),
      room(`${drawer}.right-side`, `${drawer}.right-packing`),
    ];
    for (const side of sides) {
      expect(side).toBeGreaterThan(12.9);
      expect(side).toBeLessThan(13.2 + 25.4 / 32);
    }
    const walls = ["cabinet.left-side", divider(1), divider(2), "cabinet.right-side"];
    expect(to(walls[i] as string, 0)).toBe(from(`${drawer}.left-packing`, 0));
    expect(to(`${drawer}.right-packing`, 0)).toBe(from(walls[i + 1] as string, 0));
  });
});
