import type { Length } from "../../../units/length.ts";
import {
  add,
  ceil,
  compare,
  divide,
  half,
  less,
  min,
  multiply,
  type Rational,
  subtract,
  sum,
  ZERO,
} from "../../../units/rational.ts";
import type { Item } from "./item.ts";

/** No more different sizes than this are tried as limits below which parts are left out. */
const MOST_LIMITS = 16;

/**
 * The fewest boards of one size that can hold the blanks, whatever the cuts. Their area, kerf included, is divided by the board's;
 * and again with parts larger than the board less a limit counted as its whole width or length, and parts smaller than the
 * limit as nothing (the dual feasible functions of Martello and Toth, combined over two directions as by Fekete and Schepers).
 * `width` and `length` are what the trimmed board measures. Exact.
 */
export function fewestBoards(items: readonly Item[], width: Length, length: Length, kerf: Length): number {
  const [wide, long] = [add(width, kerf), add(length, kerf)];
  const shapes = items.map((item) =>
    item.shapes.map(({ across, along }) => ({ width: add(across, kerf), length: add(along, kerf) })),
  );
  const widths = limits(
    shapes.flat().map((shape) => shape.width),
    wide,
  ).map((limit) => shapes.map((ways) => ways.map((shape) => counted(shape.width, wide, limit))));
  const lengths = limits(
    shapes.flat().map((shape) => shape.length),
    long,
  ).map((limit) => shapes.map((ways) => ways.map((shape) => counted(shape.length, long, limit))));
  const area = multiply(wide, long);
  const bounds = widths.flatMap((w) =>
    lengths.map((l) => {
      const areas = w.map((ways, i) => ways.map((size, j) => multiply(size, l[i]?.[j] ?? ZERO)).reduce(min));
      return Number(ceil(divide(sum(areas), area)));
    }),
  );
  return Math.max(...bounds);
}

const counted = (size: Rational, whole: Rational, limit: Rational): Rational =>
  less(subtract(whole, limit), size) ? whole : less(size, limit) ? ZERO : size;

/** Zero, half the board, and the sizes up to that: in between nothing changes. */
function limits(sizes: readonly Rational[], whole: Rational): readonly Rational[] {
  const middle = half(whole);
  const small = new Map(sizes.filter((size) => !less(middle, size)).map((size) => [`${size.n}/${size.d}`, size]));
  const sorted = [...small.values()].toSorted(compare);
  const step = Math.max(1, Math.ceil(sorted.length / MOST_LIMITS));
  return [ZERO, ...sorted.filter((_, i) => i % step === 0), middle];
}
