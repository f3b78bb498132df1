import fc from "fast-check";
import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { inches, type Length, millimetres, rational } from "../../../src/units/index.ts";
import { faultsOf } from "./replay.ts";
import { blank, board, sheet } from "./stock.ts";

const sixteenths = (low: number, high: number): fc.Arbitrary<Length> =>
  fc.integer({ min: low * 16, max: high * 16 }).map((n) => inches(n, 16));
/** The last two are no whole number of 1/16 µm. */
const kerf = fc.constantFrom(inches(1, 8), inches(3, 32), millimetres(32, 10), inches(1, 7), rational(100_001, 3));
const grain = fc.constantFrom("length" as const, "width" as const, "free" as const);

const plain = sheet(inches(48), inches(96));
const odd = sheet(inches(340, 7), inches(290, 3), { name: "ply" });
const wide = board(inches(45, 4), [inches(96), inches(144)], { width: null });

const checked = (
  stock: typeof plain,
  sizes: readonly (readonly [Length, Length, "length" | "width" | "free"])[],
  k: Length,
) => {
  const blanks = sizes.map(([width, length, along], i) => blank(stock, `b${i}`, width, length, { grain: along }));
  const all = new Map(blanks.map((each) => [each.id, each]));
  const { layouts, proof, findings } = layOut([stock], blanks, k);
  expect(findings).toEqual([]);
  expect(layouts.flatMap((layout) => faultsOf(layout, all))).toEqual([]);
  const placed = layouts.flatMap(({ placements }) => placements.map((p) => p.blank));
  expect(placed.toSorted()).toEqual([...all.keys()].toSorted());
  for (const each of proof) {
    expect(each.count).toBe(layouts.length);
    expect(each.countBound).toBeLessThanOrEqual(each.count);
    expect(each.optimal).toBe(each.count === each.countBound);
  }
};

test("every list of parts comes out of its sheets", () => {
  const part = fc.tuple(sixteenths(1, 47), sixteenths(1, 47), grain);
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 14 }), kerf, fc.constantFrom(plain, odd), (parts, k, stock) =>
      checked(stock, parts, k),
    ),
    { numRuns: 40 },
  );
});

test("every list of parts comes out of its boards, ripped or as wide as they are", () => {
  const narrow = fc.tuple(sixteenths(1, 11), sixteenths(1, 95), fc.constant("length" as const));
  const full = fc.tuple(fc.constant(inches(45, 4)), sixteenths(1, 95), fc.constant("length" as const));
  fc.assert(
    fc.property(fc.array(fc.oneof(narrow, full), { minLength: 1, maxLength: 14 }), kerf, (parts, k) =>
      checked(wide, parts, k),
    ),
    { numRuns: 40 },
  );
});
