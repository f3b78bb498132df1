import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inches, type Length, millimetres, TOLERANCE } from "../../src/units/length.ts";
import { printLength } from "../../src/units/print-length.ts";
import { absolute, add, equal, half, less, multiply, rational, subtract, ZERO } from "../../src/units/rational.ts";
import { readLength } from "../../src/units/read-measure.ts";
import { type Direction, roundTo } from "../../src/units/round.ts";

const PRECISIONS = [
  ...[1, 2, 4, 8, 16, 32, 64].map((d) => ({ units: "inch" as const, precision: inches(1, d) })),
  ...[1, 2, 10].map((d) => ({ units: "mm" as const, precision: millimetres(1, d) })),
];
const length: fc.Arbitrary<Length> = fc
  .tuple(fc.bigInt(0n, 1_600_000_000n), fc.bigInt(1n, 97n))
  .map(([n, d]) => rational(n, d));

describe("what is printed can be read", () => {
  test.each(PRECISIONS)("multiples of the precision come back exactly: $units $precision", ({ units, precision }) => {
    fc.assert(
      fc.property(
        fc.bigInt(0n, 200_000n),
        fc.constantFrom("ascii" as const, "typographic" as const),
        (steps, style) => {
          const exact = multiply(rational(steps), precision);
          const { text, residual } = printLength(exact, { units, precision, style });
          expect(readLength(text, units)).toEqual(exact);
          expect(residual).toEqual(ZERO);
        },
      ),
    );
  });

  test("any length: what is read is the length and the residual", () => {
    fc.assert(
      fc.property(
        length,
        fc.constantFrom(...PRECISIONS),
        fc.constantFrom<Direction>("nearest", "down", "up"),
        (exact, { units, precision }, direction) => {
          const { text, residual } = printLength(exact, { units, precision, direction });
          expect(readLength(text, units)).toEqual(add(exact, residual));
        },
      ),
    );
  });

  test("without a precision nothing is lost", () => {
    fc.assert(
      fc.property(length, fc.constantFrom("inch" as const, "mm" as const), (exact, units) => {
        expect(readLength(printLength(exact, { units }).text, units)).toEqual(exact);
      }),
    );
  });
});

test("inches and millimetres are spellings of one length", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400_000 }), (sixtyFourths) => {
      // 1/64 in is 0.396875 mm: a decimal that ends, so both can be written out.
      const digits = (BigInt(sixtyFourths) * 396_875n).toString().padStart(7, "0");
      const metric = `${digits.slice(0, -6)}.${digits.slice(-6)} mm`;
      expect(readLength(metric, "inch")).toEqual(readLength(`${sixtyFourths}/64`, "inch"));
    }),
  );
});

test("rounding goes the way that was asked for, by less than a step", () => {
  fc.assert(
    fc.property(length, fc.constantFrom(...PRECISIONS), (exact, { precision }) => {
      const [down, near, up] = (["down", "nearest", "up"] as const).map((way) => roundTo(exact, precision, way));
      if (down === undefined || near === undefined || up === undefined) throw new Error("three ways");
      expect(less(exact, down) || less(up, exact)).toBe(false);
      expect(less(subtract(exact, down), precision) && less(subtract(up, exact), precision)).toBe(true);
      expect(less(half(precision), absolute(subtract(near, exact)))).toBe(false);
      expect(equal(near, down) || equal(near, up)).toBe(true);
    }),
  );
});

test.each([
  [inches(23, 32), "inch", "23/32", "23\u204432"],
  [inches(3, 2), "inch", "1 1/2", "1\u202f1\u20442"],
  [inches(48), "inch", "48", "48"],
  [inches(0), "inch", "0", "0"],
  [inches(-3, 2), "inch", "-1 1/2", "\u22121\u202f1\u20442"],
  [millimetres(600), "mm", "600", "600"],
  [millimetres(25, 2), "mm", "12.5", "12.5"],
  [millimetres(-1, 10), "mm", "-0.1", "\u22120.1"],
  [inches(1), "mm", "25.4", "25.4"],
  [millimetres(1, 3), "mm", "1/3", "1\u20443"],
] as const)("%o in %s prints as %s", (exact, units, ascii, typographic) => {
  expect(printLength(exact, { units }).text).toBe(ascii);
  expect(printLength(exact, { units, style: "typographic" }).text).toBe(typographic);
});

test("halves go up, and the residual is exact", () => {
  const printed = printLength(inches(33, 32), { units: "inch", precision: inches(1, 16) });
  expect(printed).toEqual({ text: "1 1/16", residual: inches(1, 32) });
  expect(TOLERANCE).toBe(Number(millimetres(1, 100).n));
});
