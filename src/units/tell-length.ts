import { inches, type Length, millimetres } from "./length.ts";
import { type PrintOptions, sayLength } from "./print-length.ts";
import { equal } from "./rational.ts";
import { roundTo } from "./round.ts";

/** A length for a sentence about the plan: as it is, or "about" to the nearest 1/64 in or 0.1 mm where it falls between two marks. */
export function tellLength(length: Length, units: PrintOptions["units"]): string {
  const step = units === "inch" ? inches(1, 64) : millimetres(1, 10);
  const near = roundTo(length, step);
  const said = sayLength(near, { units });
  return equal(near, length) ? said : `about ${said}`;
}
