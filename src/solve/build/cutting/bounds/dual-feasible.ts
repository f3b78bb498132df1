/**
 * Fewest bins of one size, whatever the cuts. A dual feasible function maps sizes so that what fits a length side by side still fits it
 * mapped; two of them, one for each direction, give every part an area in a bin of area 1 (Fekete and Schepers 2004; the functions after
 * Martello and Toth, Lueker, and Carlier, Clautiaux and Moukrim 2007).
 */
import type { PartSizes } from "../search/problem.ts";

/** Sizes mapped into 0 to 1. */
type Mapped = (size: number) => number;

/** No more different sizes than this serve as limits of functions. */
const MOST_LIMITS = 64;
const MOST_FOLDS = 24;
/** More than doubles lose in a sum of areas. */
const ROUNDING = 1e-9;

/** Never more than the truth. `widths` and `lengths` of parts are whole numbers no larger than the bin's. */
export function binsByArea(parts: readonly PartSizes[], width: number, length: number): number {
  const sizes = (side: "width" | "length"): readonly number[] =>
    parts.flatMap(({ ways }) => ways.map((way) => way[side])).sort((a, b) => a - b);
  const [across, along] = [functions(sizes("width"), width), functions(sizes("length"), length)];
  const most = largest(
    tables(across, (way) => way.width, parts),
    tables(along, (way) => way.length, parts),
    (w, l, ways) => {
      let least = (w[0] as number) * (l[0] as number);
      for (let way = 1; way < ways; way += 1) least = Math.min(least, (w[way] as number) * (l[way] as number));
      return least;
    },
  );
  return Math.ceil(most - ROUNDING);
}

type Table = readonly (readonly Float64Array[])[];

/** The greatest sum of areas over all pairs of functions. */
function largest(
  across: Table,
  along: Table,
  area: (width: Float64Array, length: Float64Array, ways: number) => number,
): number {
  let most = 0;
  for (const w of across)
    for (const l of along) {
      let sum = 0;
      for (let i = 0; i < w.length; i += 1) {
        const wide = w[i] as Float64Array;
        sum += area(wide, l[i] as Float64Array, wide.length);
      }
      if (sum > most) most = sum;
    }
  return most;
}

/** What each function makes of the ways of each part. */
const tables = (
  maps: readonly Mapped[],
  size: (way: PartSizes["ways"][number]) => number,
  parts: readonly Pick<PartSizes, "ways">[],
): Table => maps.map((map) => parts.map(({ ways }) => Float64Array.from(ways, (way) => map(size(way)))));

/** `all`: every size in every way, rising. */
function functions(all: readonly number[], whole: number): readonly Mapped[] {
  const sizes = [...new Set(all)];
  // Where a function changes what it makes of one of the sizes.
  const limits = [...new Set(sizes.flatMap((size) => [size, size + 1, whole - size + 1]))]
    .filter((size) => size > 0 && 2 * size <= whole + 1)
    .sort((a, b) => a - b);
  const small = thinned(limits);
  const steps = thinned(limits.filter((size) => 2 * size <= whole));
  const folds = Array.from({ length: Math.min(MOST_FOLDS, Math.floor(whole / (sizes[0] ?? whole))) }, (_, k) => k + 1);
  return [
    (size) => size / whole,
    ...small.map(
      (limit): Mapped =>
        (size) =>
          size > whole - limit ? 1 : size < limit ? 0 : size / whole,
    ),
    ...folds.map(
      (k): Mapped =>
        (size) =>
          ((k + 1) * size) % whole === 0 ? size / whole : Math.floor(((k + 1) * size) / whole) / k,
    ),
    ...small.map((limit) => counting(all, limit, whole)),
    ...steps.map((step): Mapped => {
      const pieces = Math.floor(whole / step);
      return (size) =>
        2 * size > whole
          ? 1 - Math.floor((whole - size) / step) / pieces
          : 2 * size === whole
            ? 0.5
            : Math.floor(size / step) / pieces;
    }),
  ];
}

/** Depends on the sizes that there are: each middling one counts as one, a large one as many as it keeps out, of those that fit together. */
function counting(all: readonly number[], limit: number, whole: number): Mapped {
  const middling = all.filter((size) => size >= limit && 2 * size <= whole);
  const fitting = (room: number): number => {
    let [count, used] = [0, 0];
    while (count < middling.length && used + (middling[count] as number) <= room) {
      used += middling[count] as number;
      count += 1;
    }
    return count;
  };
  const most = fitting(whole);
  if (most === 0) return (size) => (2 * size > whole ? 1 : 0);
  return (size) => (2 * size > whole ? 1 - fitting(whole - size) / most : size >= limit ? 1 / most : 0);
}

function thinned(sizes: readonly number[]): readonly number[] {
  const step = Math.max(1, Math.ceil(sizes.length / MOST_LIMITS));
  return sizes.filter((_, i) => i % step === 0);
}
