/** A full-size pattern divided over sheets that are put together. */
import { OVERLAP } from "../../../solve/build/patterns/sheets.ts";
import { truePoints } from "./print-bar.ts";

/** A rectangle of a pattern, in points from its lower left corner, y up; with its place among the others. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Two tiles share so much. */
export const SHARED = truePoints(OVERLAP);

/** From, to: as few as there can be, all but the last as long as the paper. */
export function stretches(size: number, free: number): readonly (readonly [number, number])[] {
  if (size <= free) return [[0, size]];
  const count = Math.ceil((size - SHARED) / (free - SHARED));
  return Array.from({ length: count }, (_, i) => {
    const from = i * (free - SHARED);
    return [from, Math.min(size, from + free)] as const;
  });
}

export const tilesOf = (
  { width, height }: { readonly width: number; readonly height: number },
  free: { readonly width: number; readonly height: number },
): readonly Tile[] =>
  stretches(height, free.height).flatMap(([bottom, top], row) =>
    stretches(width, free.width).map(([left, right], column) => ({ column, row, left, right, bottom, top })),
  );
