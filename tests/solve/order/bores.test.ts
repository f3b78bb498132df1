import fc from "fast-check";
import { expect, test } from "vitest";
import { holesMeet } from "../../../src/solve/build/order/bores.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { millimetres } from "../../../src/units/index.ts";

type V3 = readonly [number, number, number];
interface Bore {
  readonly at: V3;
  readonly direction: V3;
  readonly across: number;
  readonly deep: number;
}

const hole = (bore: Bore, part = "a"): Hole => ({
  part,
  kind: "pilot",
  at: [millimetres(bore.at[0]), millimetres(bore.at[1]), millimetres(bore.at[2])],
  direction: bore.direction,
  stages: [{ diameter: millimetres(bore.across), depth: millimetres(bore.deep) }],
  through: false,
  for: null,
  keep: { edge: millimetres(0), end: millimetres(0), under: millimetres(0) },
  atBench: true,
});

/** Whether any of a grid of points 0.5 mm apart lies in both cylinders, each made thicker and longer by `grown`. */
function meetSampled(a: Bore, b: Bore, grown: number): boolean {
  const inside = (p: V3, { at, direction, across, deep }: Bore): boolean => {
    const d: V3 = [p[0] - at[0], p[1] - at[1], p[2] - at[2]];
    const along = d[0] * direction[0] + d[1] * direction[1] + d[2] * direction[2];
    const away = Math.sqrt(Math.max(0, d[0] ** 2 + d[1] ** 2 + d[2] ** 2 - along ** 2));
    return along >= -grown && along <= deep + grown && away <= across / 2 + grown;
  };
  for (let x = -2; x <= 22; x += 0.5)
    for (let y = -2; y <= 22; y += 0.5)
      for (let z = -2; z <= 22; z += 0.5) if (inside([x, y, z], a) && inside([x, y, z], b)) return true;
  return false;
}

const slant = Math.SQRT1_2;
const bores = fc.record({
  at: fc.tuple(fc.integer({ min: 4, max: 16 }), fc.integer({ min: 4, max: 16 }), fc.integer({ min: 4, max: 16 })),
  direction: fc.constantFrom<V3>([1, 0, 0], [0, -1, 0], [0, 0, 1], [slant, slant, 0], [0, -slant, slant]),
  across: fc.integer({ min: 2, max: 10 }),
  deep: fc.integer({ min: 1, max: 15 }),
});

test("holes meet where points of one lie in the other, and only near such places", () => {
  let [met, apart] = [0, 0];
  fc.assert(
    fc.property(bores, bores, (a, b) => {
      const meet = holesMeet(hole(a), hole(b));
      if (meet) met += 1;
      else apart += 1;
      // The grid finds every place where they overlap by much; grown by 0.8 mm it finds every place where they nearly touch.
      if (meetSampled(a, b, -0.5)) expect(meet).toBe(true);
      if (!meetSampled(a, b, 1)) expect(meet).toBe(false);
    }),
    { seed: 7, numRuns: 150 },
  );
  expect(Math.min(met, apart)).toBeGreaterThan(20);
});

test("holes that touch, and holes of different parts, do not meet", () => {
  const a: Bore = { at: [0, 0, 0], direction: [1, 0, 0], across: 8, deep: 20 };
  expect(holesMeet(hole(a), hole({ ...a, at: [0, 8, 0] }))).toBe(false);
  expect(holesMeet(hole(a), hole({ ...a, at: [0, 7, 0] }))).toBe(true);
  expect(holesMeet(hole(a), hole({ ...a, at: [40, 0, 0], direction: [-1, 0, 0] }))).toBe(false);
  expect(holesMeet(hole(a), hole(a, "b"))).toBe(false);
});
