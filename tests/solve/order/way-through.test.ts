import { describe, expect, it } from "vitest";
import { wayThrough } from "../../../src/solve/build/order/way-through.ts";
import { UNITS_PER_MM } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";

type Sizes = readonly [number, number, number];
/** A box in mm. */
const box = (low: Sizes, high: Sizes) => {
  const [from, to] = [low, high].map((all) => all.map((mm) => mm * UNITS_PER_MM)) as [number[], number[]];
  return { solid: { low: from, high: to } } as never;
};

describe("how long a way home is", () => {
  // By hand: a bottom 12 thick lies 6 above the foot of sides 800 high.
  const sides = [box([0, 0, 0], [18, 300, 800]), box([418, 0, 0], [436, 300, 800])];
  const parts = [box([18, 0, 6], [418, 300, 18]), ...sides];
  const halves = { moving: [0], staying: [1, 2] };

  it("counts from where it has left all behind that it touches with its sides", () => {
    expect(wayThrough(parts, halves, [0, 0, 1])).toBe(18);
    expect(wayThrough(parts, halves, [0, 0, -1])).toBe(794);
    expect(wayThrough(parts, halves, [0, 1, 0])).toBe(300);
  });

  it("is nothing where it is put squarely to what stands", () => {
    expect(wayThrough(parts, { moving: [2], staying: [0] }, [-1, 0, 0])).toBe(0);
  });

  it("passes by what stands aside of its way", () => {
    const aside = [...parts, box([500, 0, -900], [520, 300, 800])];
    expect(wayThrough(aside, { moving: [0], staying: [1, 2, 3] }, [0, 0, 1])).toBe(18);
  });
});

it("a bottom that both ways are open to comes from below, and a top from above", () => {
  const ways = built("old-plans/medicine-cabinet").steps.flatMap(({ actions }) =>
    actions.flatMap((action) =>
      action.do === "add" && action.parts.some((id) => /^(top|bottom)-board$/u.test(id))
        ? action.legs.map((leg) => ("along" in leg ? leg.along : []))
        : [],
    ),
  );
  expect(ways).toEqual([
    [0, 0, 1],
    [0, 0, -1],
  ]);
});
