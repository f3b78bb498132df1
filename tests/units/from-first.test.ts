import { expect, test } from "vitest";
import { add, fromFirst, inches, millimetres, roundTo } from "../../src/units/index.ts";

const step = inches(1, 64);

// By hand: 32 mm is 80.63/64 in, told 81/64. From a first hole at 10.75/64, told 11/64, the second lies at 91.38/64: by itself it would be told 91/64, a space of 80/64.
test("places of one row are told by the first, and by what the others are told to be farther", () => {
  const first = inches(43, 256);
  const second = add(first, millimetres(32));
  const told = fromFirst([second, first], step);
  expect(told(first)).toEqual(inches(11, 64));
  expect(told(second)).toEqual(inches(92, 64));
  expect(roundTo(second, step)).toEqual(inches(91, 64));
});

test("other lengths are not told", () => {
  expect(fromFirst([inches(1)], step)(inches(2))).toBeNull();
  expect(fromFirst([], step)(inches(2))).toBeNull();
});
