import fc from "fast-check";
import { expect, test } from "vitest";
import {
  add,
  ceil,
  compare,
  divide,
  equal,
  floor,
  multiply,
  rational,
  round,
  subtract,
  toNumber,
} from "../../src/units/rational.ts";

const number = fc.tuple(fc.bigInt(-(10n ** 12n), 10n ** 12n), fc.bigInt(1n, 10n ** 6n)).map(([n, d]) => rational(n, d));

test("sums, differences, products and quotients satisfy the laws of a field", () => {
  fc.assert(
    fc.property(number, number, number, (a, b, c) => {
      expect(equal(multiply(a, add(b, c)), add(multiply(a, b), multiply(a, c)))).toBe(true);
      expect(equal(add(subtract(a, b), b), a)).toBe(true);
      if (b.n !== 0n) expect(equal(multiply(divide(a, b), b), a)).toBe(true);
    }),
  );
});

test("order and rounding agree with cross multiplication in whole numbers", () => {
  fc.assert(
    fc.property(number, number, (a, b) => {
      const left = a.n * b.d;
      const right = b.n * a.d;
      expect(compare(a, b)).toBe(left < right ? -1 : left > right ? 1 : 0);
      expect(floor(a) * a.d <= a.n && a.n < (floor(a) + 1n) * a.d).toBe(true);
      expect(ceil(a) * a.d >= a.n && a.n > (ceil(a) - 1n) * a.d).toBe(true);
      const twice = 2n * a.n - 2n * round(a) * a.d;
      expect(-a.d <= twice && twice < a.d).toBe(true);
    }),
  );
});

test("the double of a small fraction is the one that JavaScript's own division gives", () => {
  for (let n = -64; n <= 64; n += 1) expect(toNumber(rational(n, 64))).toBe(n / 64);
  expect(() => rational(1, 0)).toThrow(RangeError);
});
