/** Places at equal distances: the first and the last are measured, between them only the spaces are counted (ISO 129-1). */
import { TOLERANCE } from "../../../units/index.ts";

/** In the frame of the face view: along the part, across it, towards the eye. Units of 1/16 µm. */
export type InPart = readonly [number, number, number];

export interface Row {
  readonly from: number;
  readonly to: number;
  readonly spaces: number;
}

/** A row, and which of the points stand inside it. */
export interface Found {
  readonly row: Row;
  readonly inside: readonly InPart[];
}

/** Fewer spaces are told one by one. */
const LEAST = 4;

/** Runs of equal spaces between sorted places, and what is inside them; what is `apart` ends a run. */
export function runsOf(
  places: readonly number[],
  apart: (from: number, to: number) => boolean,
): readonly { readonly row: Row; readonly inside: readonly number[] }[] {
  const found: { row: Row; inside: readonly number[] }[] = [];
  const space = (i: number): number =>
    i + 1 < places.length && !apart(places[i] as number, places[i + 1] as number)
      ? (places[i + 1] as number) - (places[i] as number)
      : Number.NaN;
  for (let start = 0; start < places.length - 1; ) {
    let end = start + 1;
    while (same(space(end), space(start))) end++;
    const spaces = end - start;
    if (spaces >= LEAST) {
      const row = { from: places[start] as number, to: places[end] as number, spaces };
      found.push({ row, inside: places.slice(start + 1, end) });
    }
    start = spaces >= LEAST ? end : start + 1;
  }
  return found;
}

/** The rows of some points along an axis of the part; the points of a row differ in nothing else. */
export function rowsOf(points: readonly InPart[], axis: 0 | 1): readonly Found[] {
  const other = 1 - axis;
  const sorted = [...points].sort((a, b) => at(a, other) - at(b, other) || at(a, axis) - at(b, axis));
  const found: Found[] = [];
  for (let start = 0; start < sorted.length - 1; ) {
    let end = start + 1;
    const pitch = step(sorted, start, axis);
    while (
      end < sorted.length - 1 &&
      same(at(sorted[end + 1], other), at(sorted[start], other)) &&
      same(step(sorted, end, axis), pitch)
    )
      end++;
    const spaces = end - start;
    if (spaces >= LEAST && same(at(sorted[end], other), at(sorted[start], other))) {
      const row = { from: at(sorted[start], axis), to: at(sorted[end], axis), spaces };
      found.push({ row, inside: sorted.slice(start + 1, end) });
    }
    start = spaces >= LEAST ? end : start + 1;
  }
  return found;
}

/** Without those that another row overlaps: which spaces belong to which could not be told from one line of numbers. */
export const rowsApart = (found: readonly Found[]): readonly Found[] =>
  found.filter(({ row }) =>
    found.every(
      ({ row: other }) =>
        (same(other.from, row.from) && same(other.to, row.to) && other.spaces === row.spaces) ||
        other.from > row.to ||
        other.to < row.from,
    ),
  );

/** Each once: rows side by side have the same numbers. */
export const rowsOnce = (rows: readonly Row[]): readonly Row[] =>
  rows.filter(
    (row, i) =>
      !rows
        .slice(0, i)
        .some(({ from, to, spaces }) => same(from, row.from) && same(to, row.to) && spaces === row.spaces),
  );

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 2 * TOLERANCE;
const at = (point: InPart | undefined, i: number): number => point?.[i] ?? Number.NaN;
const step = (points: readonly InPart[], i: number, axis: number): number =>
  at(points[i + 1], axis) - at(points[i], axis);
