import { inches, type Length, toMillimetres, UNITS_PER_INCH, UNITS_PER_MM } from "./length.ts";
import { type PrintOptions, printLength } from "./print-length.ts";
import { multiply, rational } from "./rational.ts";

const isMark = (length: Length): boolean => multiply(length, rational(64, UNITS_PER_INCH)).d === 1n;
const isTenth = (length: Length): boolean => multiply(length, rational(10, UNITS_PER_MM)).d === 1n;

/** A length of what is bought, with its unit: it is made in millimetres where it is no fraction of an inch, and told in them. */
export function sayMade(length: Length, units: PrintOptions["units"]): string {
  if (units === "inch" && !isMark(length) && isTenth(length)) return `${toMillimetres(length)} mm`;
  const { text } = printLength(length, {
    units,
    style: "typographic",
    ...(units === "inch" && { precision: inches(1, 64) }),
  });
  return `${text} ${units === "inch" ? "in" : "mm"}`;
}
