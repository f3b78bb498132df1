import { inches, type Length, millimetres, UNITS_PER_INCH } from "./length.ts";
import { type PrintOptions, printDecimal, sayLength } from "./print-length.ts";
import { divide, rational } from "./rational.ts";
import { roundTo } from "./round.ts";

/** The thickness of a stock as it was measured: `45/64 in`, `0.703 in`, `17.9 mm`. Other than marks are told to 1/1000 in or 1/100 mm. */
export function sayThickness(thickness: Length, options: Pick<PrintOptions, "units" | "style">): string {
  if (options.units === "mm") return sayLength(roundTo(thickness, millimetres(1, 100)), options);
  const value = divide(thickness, rational(UNITS_PER_INCH));
  if (64n % value.d === 0n) return sayLength(thickness, options);
  const decimal = printDecimal(divide(roundTo(thickness, inches(1, 1000)), rational(UNITS_PER_INCH)));
  return `${decimal}${options.style === "typographic" ? "\u202f" : " "}in`;
}
