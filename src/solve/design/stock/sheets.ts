import { inches, type Length, millimetres } from "../../../units/length.ts";
import { equal, multiply, type Rational } from "../../../units/rational.ts";

/** A sheet as it is sold: the grain of its faces runs along `long`. */
export interface SheetSize {
  readonly wide: Length;
  readonly long: Length;
}

const mm = (wide: number, long: number): SheetSize => ({ wide: millimetres(wide), long: millimetres(long) });
const inch = (wide: number, long: number): SheetSize => ({ wide: inches(wide), long: inches(long) });

/** Sizes that are sold, the usual one first. Common practice, no source. */
export const SHEET_SIZES = {
  inch: [inch(48, 96), inch(60, 60), inch(48, 48), inch(24, 48), inch(60, 120)],
  mm: [mm(1220, 2440), mm(2440, 1220), mm(1525, 1525), mm(1250, 2500), mm(1220, 1220), mm(610, 1220)],
} as const;

const FOOT = inches(12);

/** The sheet called `4 x 8`, `48 x 96` or `1525 x 1525`: feet, inches or millimetres, if that size is sold. */
export function sheetCalled(wide: Rational, long: Rational): SheetSize | undefined {
  const units = [FOOT, inches(1), millimetres(1)];
  return [...SHEET_SIZES.inch, ...SHEET_SIZES.mm].find((size) =>
    units.some((unit) => equal(multiply(wide, unit), size.wide) && equal(multiply(long, unit), size.long)),
  );
}

/** The size that is meant when nothing is said: Baltic birch is sold square, everything else as 4 × 8 ft or its metric neighbour. */
export function usualSheet(units: "inch" | "mm", baltic: boolean): SheetSize {
  if (baltic) return units === "inch" ? inch(60, 60) : mm(1525, 1525);
  return SHEET_SIZES[units][0];
}
