import { describe, expect, test } from "vitest";
import { inches, type Length, millimetres } from "../../src/units/length.ts";
import { readLength, readMeasure } from "../../src/units/read-measure.ts";

/** Every way of writing a measure that the language has. 25.4 mm to the inch, exactly (yard and pound agreement of 1959). */
const WRITTEN: [text: string, inInches: Length, inMillimetres?: Length][] = [
  ["34", inches(34), millimetres(34)],
  ["34 1/2", inches(69, 2), millimetres(69, 2)],
  ["34-1/2", inches(69, 2), millimetres(69, 2)],
  ["34½", inches(69, 2), millimetres(69, 2)],
  ["34 ½", inches(69, 2), millimetres(69, 2)],
  ["34\u202f1\u20442", inches(69, 2), millimetres(69, 2)],
  ["3/4", inches(3, 4), millimetres(3, 4)],
  ["¾", inches(3, 4), millimetres(3, 4)],
  ["⅞ in", inches(7, 8)],
  ['3/4"', inches(3, 4)],
  ["3/4 inch", inches(3, 4)],
  ["12.5", inches(25, 2), millimetres(25, 2)],
  [".5", inches(1, 2), millimetres(1, 2)],
  ["2' 6\"", inches(30)],
  ["2'6\"", inches(30)],
  ["2' 6", inches(30)],
  ["2'-6\"", inches(30)],
  ["2'-6 1/2\"", inches(61, 2)],
  ["2′ 6½″", inches(61, 2)],
  ["2 ft 6 in", inches(30)],
  ["2 ft", inches(24)],
  ["2 1/2 feet", inches(30)],
  ["600 mm", millimetres(600)],
  ["600mm", millimetres(600)],
  ["60 cm", millimetres(600)],
  ["1.2 m", millimetres(1200)],
  ["1/2 mm", millimetres(1, 2)],
  ["25.4 mm", inches(1)],
  ["2 FT 6 IN", inches(30)],
  ["  34  ", inches(34), millimetres(34)],
];

describe("a measure is read the way it is said", () => {
  test.each(WRITTEN)("%s", (text: string, inInches: Length, inMillimetres: Length = inInches) => {
    expect(readLength(text, "inch")).toEqual(inInches);
    expect(readLength(text, "mm")).toEqual(inMillimetres);
  });
});

test("a hyphen that was read as a blank is told, a blank is not", () => {
  expect(readMeasure("34-1/2")).toMatchObject({ hyphenated: true });
  expect(readMeasure("2'-6\"")).toMatchObject({ hyphenated: true });
  expect(readMeasure("34 1/2")).toMatchObject({ hyphenated: false });
});

test("an angle is an angle", () => {
  for (const text of ["15 deg", "15°", "15 degrees"])
    expect(readMeasure(text)).toMatchObject({ measure: { kind: "angle", degrees: { n: 15n, d: 1n } } });
  expect(readLength("15 deg", "inch")).toBeUndefined();
});

test.each([
  ["3/0", "divided by zero", 0],
  ["34 inchs", "unknown unit", 3],
  ["34 mm2", "unknown unit", 3],
  ["2 ft 6 mm", "two numbers", 5],
  ["34 35", "two numbers", 3],
  ["2' 6/0", "divided by zero", 3],
])("%s is a problem, and the place is known", (text, problem, start) => {
  expect(readMeasure(text)).toMatchObject({ problem, start });
});

test.each(["", "wide", "34 + 1", "1.2.3", "34 1/2 - 1/4", "1/2-1/4", "--3", "3,5", "1e400", "0x10", "1_000", ".nan"])(
  "%j is not one measure",
  (text) => {
    expect(readLength(text, "inch")).toBeUndefined();
  },
);
