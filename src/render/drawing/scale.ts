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
/** Reductions. 1:2.5, 1:15 and 1:25, and in inches 1:6 and 1:10, stand where the next rung would waste half the page. */
const METRIC: readonly number[] = [1, 2, 2.5, 5, 10, 15, 20, 25, 50, 100, 200];
const INCH: readonly number[] = [1, 2, 4, 6, 8, 10, 12, 16, 24, 32, 48, 96, 192];
/**
 * Between them, for what has a page to itself: metric what the edges of common scale rules (1:20 to 1:125, and 1:100 to 1:500) read in
 * tenths and hundredths, in inches whole parts of the foot and the inch.
 */
const MORE_METRIC: readonly number[] = [3, 4, 7.5, 12.5, 30, 40, 75, 125];
const MORE_INCH: readonly number[] = [3, 5, 20, 64, 128];

const scalesBy = (reductions: readonly number[]): readonly Scale[] =>
  reductions.map((by) => ({ text: `1:${by}`, points: POINTS_PER_UNIT / by }));

/** The usual scales, largest first. Parts and layouts keep to these few, so that one can be held against the other. */
export const usualScales = (units: Units): readonly Scale[] => scalesBy(units === "mm" ? METRIC : INCH);

/** The usual scales and those between them, largest first. */
export const closeScales = (units: Units): readonly Scale[] =>
  scalesBy([...(units === "mm" ? [...METRIC, ...MORE_METRIC] : [...INCH, ...MORE_INCH])].sort((a, b) => a - b));

/** The largest usual scale that `fits`, or of others; the smallest of all if none does, reduced further until it does. */
export function usualScale(units: Units, fits: (scale: Scale) => boolean, scales = usualScales(units)): Scale {
  const found = scales.find(fits);
  if (found) return found;
  let by = units === "mm" ? 500 : 384;
  while (by < 1e6 && !fits({ text: "", points: POINTS_PER_UNIT / by })) by *= 2;
  return { text: `1:${by}`, points: POINTS_PER_UNIT / by };
}

/** So much smaller a drawing is not worth it that the last number finds its place. */
const SMALLER = 0.6;

/** Of what goes in at the scales, largest first, the largest that loses nothing, if it is not much smaller; else the largest. No more is drawn than is looked at. */
export function wholeOf<T extends { readonly lost: number; readonly scale: Scale }>(
  scales: readonly Scale[],
  at: (scale: Scale) => Iterable<T>,
): T | null {
  let largest: T | null = null;
  for (const scale of scales) {
    if (largest && scale.points < SMALLER * largest.scale.points) break;
    for (const each of at(scale)) {
      if (each.lost === 0) return each;
      largest ??= each;
    }
  }
  return largest;
}
