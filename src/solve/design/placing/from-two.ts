import type { Length } from "../../../units/length.ts";
import { add, half, multiply, rational, subtract } from "../../../units/rational.ts";

export interface Span {
  readonly low: Length;
  readonly high: Length;
}

/** Low and high from any two of low, high, middle and extent. */
export function fromTwo(low?: Length, high?: Length, centre?: Length, size?: Length): Span | null {
  if (low && high) return { low, high };
  if (low && size) return { low, high: add(low, size) };
  if (high && size) return { low: subtract(high, size), high };
  if (centre && size) return { low: subtract(centre, half(size)), high: add(centre, half(size)) };
  const two = rational(2);
  if (low && centre) return { low, high: subtract(multiply(centre, two), low) };
  if (high && centre) return { low: subtract(multiply(centre, two), high), high };
  return null;
}
