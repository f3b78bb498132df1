/** Places at equal distances: the first and the last are measured, between them only the spaces are counted (ISO 129-1). */
import { TOLERANCE } from "../../../units/index.ts";

/** In the frame of the face view: along the part, across it, towards the eye. Units of 1/16 µm. */
export type InPart = readonly [number, number, number];

export interface Row {
  readonly from: number;
  readonly to: number;
  readonly spaces: number;
}

/** A row, and the points that stand in it. */
export interface Found<P> {
  readonly row: Row;
  readonly points: readonly P[];
}

/** Fewer spaces between edges, and between holes, are told one by one. */
const LEAST = 4;
const LEAST_HOLES = 3;
/** But so few are a row of their own where one beside it has places nearly the same, nearer than 20 mm: nobody could tell whose number is whose. */
const LEAST_BESIDE = 2;
const NEARLY = 320_000;

/** Runs of equal spaces between sorted places, and what is inside them. */
export function runsOf(
  places: readonly number[],
): readonly { readonly row: Row; readonly inside: readonly number[] }[] {
  const found: { row: Row; inside: readonly number[] }[] = [];
  const space = (i: number): number =>
    i + 1 < places.length ? (places[i + 1] as number) - (places[i] as number) : Number.NaN;
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
export function rowsOf<P>(all: readonly P[], spotOf: (point: P) => InPart, axis: 0 | 1): readonly Found<P>[] {
  const other = 1 - axis;
  const at = (i: number, along: number): number => {
    const point = sorted[i];
    return point === undefined ? Number.NaN : (spotOf(point)[along] as number);
  };
  const sorted = [...all].sort(
    (a, b) => (spotOf(a)[other] as number) - (spotOf(b)[other] as number) || spotOf(a)[axis] - spotOf(b)[axis],
  );
  const step = (i: number): number =>
    same(at(i + 1, other), at(i, other)) ? at(i + 1, axis) - at(i, axis) : Number.NaN;
  const nearlyBeside = (points: readonly P[]): boolean =>
    points.map(spotOf).some((own) =>
      sorted.map(spotOf).some((each) => {
        const off = Math.abs(each[axis] - own[axis]);
        return !same(each[other] as number, own[other] as number) && off > 2 * TOLERANCE && off < NEARLY;
      }),
    );
  const found: Found<P>[] = [];
  for (let start = 0; start < sorted.length - 1; ) {
    let end = start + 1;
    while (same(step(end), step(start))) end++;
    const spaces = end - start;
    const least = spaces >= LEAST_BESIDE && nearlyBeside(sorted.slice(start, end + 1)) ? LEAST_BESIDE : LEAST_HOLES;
    const row = spaces >= least && step(start) > 2 * TOLERANCE;
    if (row)
      found.push({ row: { from: at(start, axis), to: at(end, axis), spaces }, points: sorted.slice(start, end + 1) });
    start = row ? end : start + 1;
  }
  return found;
}

export const sameRow = (a: Row, b: Row): boolean => same(a.from, b.from) && same(a.to, b.to) && a.spaces === b.spaces;

/** Rows side by side that have the same numbers, as one. */
export function together<P>(found: readonly Found<P>[]): readonly Found<P>[] {
  const out: Found<P>[] = [];
  for (const { row, points } of found) {
    const i = out.findIndex((other) => sameRow(other.row, row));
    const there = out[i];
    if (there) out[i] = { row: there.row, points: [...there.points, ...points] };
    else out.push({ row, points });
  }
  return out;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 2 * TOLERANCE;
