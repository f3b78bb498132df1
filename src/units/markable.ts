import { inches, type Length, millimetres, UNITS_PER_INCH, UNITS_PER_MM } from "./length.ts";
import { divide, rational } from "./rational.ts";
import { roundTo } from "./round.ts";

/**
 * A length that can be told. What a slope gives, or a thickness of 0.703 in, is no fraction that anybody could mark, and a drill of 2.5 mm none of an
 * inch: it is told to the nearest 1/64 in or 0.1 mm.
 */
export function markable(length: Length, units: "inch" | "mm"): Length {
  const inch = units === "inch";
  const { d } = divide(length, rational(inch ? UNITS_PER_INCH : UNITS_PER_MM));
  const odd = inch ? 64n % d !== 0n : 100n % d !== 0n;
  return odd ? roundTo(length, inch ? inches(1, 64) : millimetres(1, 10)) : length;
}
