import { inches, type Length, millimetres } from "../../../units/length.ts";

/** A thickness by which rough hardwood is sold, in quarters of an inch. */
export interface Quarters {
  readonly quarters: number;
  /** As sawn. */
  readonly rough: Length;
  /** Surfaced on two sides, by the grading rules; null where the table read has no such row. */
  readonly surfaced: Length | null;
  /** What furniture makers commonly finish it to; where there is no custom, `surfaced`. */
  readonly finished: Length;
}

/** Where `rough` and `surfaced` come from. */
export const ROUGH_SOURCE = "hardwood grading rules, thickness surfaced on two sides, from a trade table";
/** Where `finished` comes from: there is no standard for it. */
export const FINISHED_SOURCE = "common practice, from memory";

type Fraction = readonly [number, number];
const row = (quarters: number, surfaced: Fraction | null, finished: Fraction): Quarters => ({
  quarters,
  rough: inches(quarters, 4),
  surfaced: surfaced && inches(...surfaced),
  finished: inches(...finished),
});

export const QUARTERS: readonly Quarters[] = [
  row(4, [13, 16], [3, 4]),
  row(5, [17, 16], [1, 1]),
  row(6, [21, 16], [5, 4]),
  row(8, [7, 4], [7, 4]),
  row(10, null, [9, 4]),
  row(12, [11, 4], [11, 4]),
  row(16, [15, 4], [15, 4]),
];

/**
 * What must come off a rough board before both faces are flat: below it a plan is warned. Common practice, no source.
 */
export const PLANING_ALLOWANCE = { inch: inches(1, 8), mm: millimetres(3) } as const;

/** A board of which nothing is known but its thickness, taken to be this big. Common practice, no source. */
export const ASSUMED_BOARD = {
  inch: { width: inches(6), length: inches(96) },
  mm: { width: millimetres(150), length: millimetres(2400) },
} as const;
