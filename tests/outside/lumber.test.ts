import { expect, test } from "vitest";
import { dressedSize } from "../../src/solve/design/stock/lumber.ts";
import { panelSize } from "../../src/solve/design/stock/panels.ts";
import { QUARTERS } from "../../src/solve/design/stock/rough.ts";
import { inches, rational, readLength, toInches } from "../../src/units/index.ts";

/**
 * American Softwood Lumber Standard PS 20, table of minimum dressed sizes, dry, as reproduced by an engineering handbook site:
 * nominal × nominal, then dressed × dressed, in inches.
 */
test.each(
  `1×2 3/4×1 1/2, 1×4 3/4×3 1/2, 1×6 3/4×5 1/2, 1×8 3/4×7 1/4, 1×10 3/4×9 1/4, 1×12 3/4×11 1/4,
   2×2 1 1/2×1 1/2, 2×4 1 1/2×3 1/2, 2×6 1 1/2×5 1/2, 2×8 1 1/2×7 1/4, 2×10 1 1/2×9 1/4, 2×12 1 1/2×11 1/4,
   3×4 2 1/2×3 1/2, 4×4 3 1/2×3 1/2, 4×6 3 1/2×5 1/2, 6×6 5 1/2×5 1/2`.split(","),
)("PS 20: %s", (line) => {
  const [, a, b, thick, wide] = /(\d+)×(\d+) (.+)×(.+)/.exec(line.trim()) ?? [];
  const size = { thickness: readLength(thick ?? "", "inch"), width: readLength(wide ?? "", "inch") };
  expect(dressedSize(rational(Number(a)), rational(Number(b)))).toEqual(size);
  expect(dressedSize(rational(Number(b)), rational(Number(a)))).toEqual(size);
});

/** Thickness rough and surfaced on two sides by the hardwood grading rules, from a trade table. */
test.each([
  [4, 1, 13 / 16],
  [5, 1.25, 17 / 16],
  [6, 1.5, 21 / 16],
  [8, 2, 1.75],
  [12, 3, 2.75],
  [16, 4, 3.75],
])("hardwood, %i quarters", (quarters, rough, surfaced) => {
  const row = QUARTERS.find((q) => q.quarters === quarters);
  expect(row && [toInches(row.rough), row.surfaced && toInches(row.surfaced)]).toEqual([rough, surfaced]);
});

/** PS 1-19, unsanded, touch-sanded or overlaid: least and greatest thickness of each performance category, in inches. */
test.each([
  ["1/4", 0.219, 0.281],
  ["11/32", 0.313, 0.375],
  ["3/8", 0.344, 0.406],
  ["15/32", 0.438, 0.5],
  ["1/2", 0.469, 0.531],
  ["19/32", 0.563, 0.625],
  ["5/8", 0.594, 0.656],
  ["23/32", 0.688, 0.75],
  ["3/4", 0.719, 0.781],
  ["1", 0.95, 1.05],
])("plywood called %s may be sold that thick", (name, least, greatest) => {
  const size = panelSize("plywood", readLength(name, "inch") ?? inches(0));
  // The limits are printed to a thousandth.
  expect(size && toInches(size.measures)).toBeGreaterThan(least - 0.0005);
  expect(size && toInches(size.measures)).toBeLessThan(greatest + 0.0005);
});
