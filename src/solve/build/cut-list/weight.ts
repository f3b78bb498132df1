import { volume } from "../../../geometry/index.ts";
import type { Units } from "../../../parse/draft.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Part, Stock } from "../../design.ts";

const KG_PER_POUND = 0.45359237; // exact, by definition of the international pound

/** kg of a part: its exact volume, mortises and grooves taken out, holes not. */
export const massOf = (part: Part, stock: Pick<Stock, "density"> | undefined): number =>
  (toNumber(volume(part.solid)) / (UNITS_PER_MM * UNITS_PER_MM * UNITS_PER_MM) / 1e9) * (stock?.density ?? 0);

/** Parts over 20 kg have their weight on the cut list. */
export const weighsMuch = (kg: number): boolean => kg > 20;

/** Over 50 lb it takes two to lift. Common practice, no source. */
export const takesTwo = (kg: number): boolean => kg > 50 * KG_PER_POUND;

/** "52 lb", "24 kg"; never nothing. */
export const sayWeight = (kg: number, units: Units): string =>
  `${Math.max(1, Math.round(units === "inch" ? kg / KG_PER_POUND : kg))}\u202f${units === "inch" ? "lb" : "kg"}`;
