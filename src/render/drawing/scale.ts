/** The usual ratios: ISO 5455 in metric plans, the carpenter's and architect's scales in inch plans. */
import type { Units } from "../../solve/design.ts";
import { UNITS_PER_INCH } from "../../units/length.ts";

export interface Scale {
  /** "1:8"; empty for a picture that is only fitted. */
  readonly text: string;
  /** Points on paper for each unit of 1/16 µm. */
  readonly points: number;
}

const POINTS_PER_UNIT = 72 / UNITS_PER_INCH;
/**
 * Reductions, no rung much more than half as small again as the last. Metric: ISO 5455, and between its steps what the edges of
 * common scale rules (1:20 to 1:125, and 1:100 to 1:500) read in tenths and hundredths. Inches: so many to the foot or the inch.
 */
const METRIC: readonly number[] = [1, 2, 2.5, 3, 4, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 125, 200];
const INCH: readonly number[] = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 48, 64, 96, 128, 192];

/** The usual scales, largest first. */
export const usualScales = (units: Units): readonly Scale[] =>
  (units === "mm" ? METRIC : INCH).map((by) => ({ text: `1:${by}`, points: POINTS_PER_UNIT / by }));

/** The largest usual scale that `fits`; the smallest of all if none does, reduced further until it does. */
export function usualScale(units: Units, fits: (scale: Scale) => boolean): Scale {
  const scales = usualScales(units);
  const found = scales.find(fits);
  if (found) return found;
  let by = units === "mm" ? 500 : 384;
  while (by < 1e6 && !fits({ text: "", points: POINTS_PER_UNIT / by })) by *= 2;
  return { text: `1:${by}`, points: POINTS_PER_UNIT / by };
}
