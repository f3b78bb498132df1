import { expect, test } from "vitest";
import { boardFeet } from "../../src/solve/build/purchases/board-feet.ts";
import { inches, type Rational, rational, readLength, round, sum, toNumber } from "../../src/units/index.ts";

/** `4 of 1 1/2 × 2 × 25`, in inches. */
const feet = (line: string): Rational => {
  const [, count = "0", sizes = ""] = /(\d+) of (.+)/.exec(line) ?? [];
  const [t, w, l] = sizes.split("×").map((size) => readLength(size.trim(), "inch") ?? inches(0));
  const one = boardFeet(t ?? inches(0), w ?? inches(0), l ?? inches(0));
  return sum(Array.from({ length: Number(count) }, () => one));
};

/** E. W. Foster, "Carpentry and Woodwork" (1911), chapter LI: a packing case of 1 in boards. */
test("packing case: 67 8/9 board feet", () => {
  const parts = ["2 of 1 × 38 × 56", "2 of 1 × 30 × 56", "2 of 1 × 30 × 36"];
  expect(sum(parts.map(feet))).toEqual(rational(67 * 9 + 8, 9));
});

/** I. S. Griffith, "Correlated Courses in Woodwork and Mechanical Drawing" (1912), chapter IV: widths and lengths to whole inches. */
test("taboret: 0.5, 3.9 and 2 feet to the nearest that is printed, thin boards counted as 1 in", () => {
  const rounded = (lines: readonly string[], parts: bigint): number =>
    Number(round(sum(lines.map(feet).map((f) => rational(f.n * parts, f.d))))) / Number(parts);
  expect(rounded(["2 of 1/2 × 3 × 13"], 10n)).toBe(0.5);
  expect(rounded(["1 of 1 × 8 × 15", "6 of 1 × 3 × 13", "1 of 1 × 14 × 15"], 10n)).toBe(3.9);
  expect(rounded(["4 of 1 1/2 × 2 × 25"], 1n)).toBe(2);
});

/** Three seat boards of 6/4 stock, 5 1/8 × 53 in: 3 × 1 1/2 × 5 1/8 × 53 / 144 = 8.49, worked by hand. */
test("seat of a bench: 8.49 board feet", () => {
  expect(toNumber(feet("3 of 1 1/2 × 5 1/8 × 53"))).toBeCloseTo(8.49, 2);
});
