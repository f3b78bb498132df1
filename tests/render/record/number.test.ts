import fc from "fast-check";
import { expect, test } from "vitest";
import { millimetres, millionths, nearestEven, printMillionths } from "../../../src/render/write/record/number.ts";
import { rational } from "../../../src/units/rational.ts";

/** Units of 1/16 µm, so that 16,000 are a millimetre. */
const printed = (n: bigint, d = 1n) => printMillionths(millimetres(rational(n, d)));

test.each([
  [16_000n, 1n, "1"],
  [406_400n, 1n, "25.4"],
  [1n, 1n, "0.000062"], // 0.0000625: the half goes to the even 2
  [3n, 1n, "0.000188"], // 0.0001875: to the even 8
  [16_000n, 3n, "0.333333"],
  [-32_000n, 3n, "-0.666667"],
  [1n, 125n, "0"], // half a millionth, to the even 0
  [-1n, 125n, "0"],
  [3n, 125n, "0.000002"],
  [-5n, 125n, "-0.000002"],
  [16_000n * 10n ** 30n, 1n, `1${"0".repeat(30)}`],
])("%s/%s units print as %s mm", (n, d, text) => {
  expect(printed(n, d)).toBe(text);
});

test("rounding is to the nearest, and halves go to the even one", () => {
  const whole = fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n });
  const check = fc.property(whole, fc.bigInt({ min: 1n, max: 10n ** 6n }), (n, d) => {
    const twiceOff = 2n * (n - nearestEven(n, d) * d);
    const off = twiceOff < 0n ? -twiceOff : twiceOff;
    return off < d || (off === d && nearestEven(n, d) % 2n === 0n);
  });
  fc.assert(check, { seed: 6 });
});

test.each([
  [1 / 128, "0.007812"], // 0.0078125 exactly
  [3 / 128, "0.023438"], // 0.0234375 exactly
  [-1 / 128, "-0.007812"],
  [0.1, "0.1"],
  [-0, "0"],
  [-1e-9, "0"],
  [5e-7, "0"], // as a double a little under half a millionth
  [1e21, "1000000000000000000000"],
])("the double %s prints as %s", (value, text) => {
  expect(printMillionths(millionths(value))).toBe(text);
});

test("a double prints as toFixed(6) has it, which ECMAScript defines by its exact value", () => {
  const value = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e9, max: 1e9 });
  const check = fc.property(value, (x) => Number(printMillionths(millionths(x))) === Number(x.toFixed(6)) + 0);
  fc.assert(check, { seed: 6, numRuns: 2000 });
});

test("what is not finite is refused", () => {
  expect(() => millionths(Number.NaN)).toThrow(RangeError);
  expect(() => millionths(Number.POSITIVE_INFINITY)).toThrow(RangeError);
});
