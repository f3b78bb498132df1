import { inches, type Length, millimetres } from "../../../units/length.ts";
import { compare, equal, type Rational, rational, subtract } from "../../../units/rational.ts";

/** Where the sizes of this file come from. */
export const LUMBER_SOURCE =
  "American Softwood Lumber Standard PS 20, minimum dressed sizes, dry (19 % moisture at most), from a reproduction";

/** A nominal size in inches with the size it has when dressed and dry. */
type Row = readonly [nominal: Rational, dressed: Length];
const row = (nominal: readonly [number, number], dressed: readonly [number, number]): Row => [
  rational(...nominal),
  inches(...dressed),
];

const THICKNESSES: readonly Row[] = [
  row([3, 8], [5, 16]),
  row([1, 2], [7, 16]),
  row([5, 8], [9, 16]),
  row([3, 4], [5, 8]),
  row([1, 1], [3, 4]),
  row([5, 4], [1, 1]),
  row([3, 2], [5, 4]),
  row([2, 1], [3, 2]),
  row([5, 2], [2, 1]),
  row([3, 1], [5, 2]),
  row([7, 2], [3, 1]),
  row([4, 1], [7, 2]),
];

const WIDTHS: readonly Row[] = [
  row([2, 1], [3, 2]),
  row([3, 1], [5, 2]),
  row([4, 1], [7, 2]),
  row([5, 1], [9, 2]),
  row([6, 1], [11, 2]),
  row([7, 1], [13, 2]),
  row([8, 1], [29, 4]),
  row([9, 1], [33, 4]),
  row([10, 1], [37, 4]),
  row([11, 1], [41, 4]),
  row([12, 1], [45, 4]),
  row([14, 1], [53, 4]),
  row([16, 1], [61, 4]),
];

/** Timbers, nominally 5 and 6 in: half an inch off both ways. */
const TIMBERS: readonly Rational[] = [rational(5), rational(6)];

const find = (rows: readonly Row[], nominal: Rational): Length | undefined =>
  rows.find(([name]) => equal(name, nominal))?.[1];

/**
 * What a piece of lumber measures that is called by two nominal sizes in inches, in either order: 2 and 4 give 1 1/2 × 3 1/2 in.
 * Undefined where the standard has no such size.
 */
export function dressedSize(a: Rational, b: Rational): { thickness: Length; width: Length } | undefined {
  const [thin, broad] = compare(a, b) > 0 ? [b, a] : [a, b];
  if (TIMBERS.some((size) => equal(size, thin))) {
    if (broad.d !== 1n || broad.n > 16n) return undefined;
    const off = rational(1, 2);
    const size = (nominal: Rational): Length => {
      const dressed = subtract(nominal, off);
      return inches(dressed.n, dressed.d);
    };
    return { thickness: size(thin), width: size(broad) };
  }
  const [thickness, width] = [find(THICKNESSES, thin), find(WIDTHS, broad)];
  return thickness === undefined || width === undefined ? undefined : { thickness, width };
}

/** Lengths in which softwood is sold, shortest first; the stated length is the actual one. Common practice, no source. */
export const SOFTWOOD_LENGTHS = {
  inch: [8, 10, 12, 16].map((feet) => inches(feet * 12)),
  mm: [2400, 3000, 3600, 4800].map((length) => millimetres(length)),
} as const;
