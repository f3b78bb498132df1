import type { Length } from "./length.ts";
import { ceil, divide, floor, multiply, rational, round } from "./rational.ts";

export type Direction = "nearest" | "down" | "up";

/** The multiple of `step` (above zero) nearest to the length, halves up, or the next one below or above. */
export function roundTo(length: Length, step: Length, direction: Direction = "nearest"): Length {
  const steps = divide(length, step);
  const whole = direction === "down" ? floor(steps) : direction === "up" ? ceil(steps) : round(steps);
  return multiply(rational(whole), step);
}
