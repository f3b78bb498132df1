import type { Rational } from "../../../units/rational.ts";

/**
 * What a formula yields. `bare` is a number that no unit has been put to: it becomes a length (in the plan's units) where a length is
 * wanted or beside one, and a plain number as a factor or where a count is wanted. Lengths in units, areas in square units.
 */
export interface Quantity {
  readonly kind: "bare" | "plain" | "length" | "area" | "angle";
  readonly value: Rational;
  /** A bare number that stands in `sizes` under a name: a measure, unless it is used as a count. */
  readonly named?: boolean;
}

export const KIND_WORDS: Readonly<Record<Quantity["kind"], string>> = {
  bare: "a number",
  plain: "a plain number",
  length: "a measure",
  area: "an area",
  angle: "an angle",
};
