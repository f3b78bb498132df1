/** Which holes of a part stand in rows: each row has a letter and a line of numbers of its own. */
import { dot } from "../../../geometry/vec.ts";
import type { Hole } from "../../../solve/design.ts";
import { type Found, type InPart, type Row, rowsOf, sameRow, together } from "./rows.ts";

export interface Ladder {
  /** Along the part, across it, or through it. */
  readonly axis: 0 | 1 | 2;
  readonly row: Row;
  /** Of its holes; none for edges. */
  readonly letters: readonly string[];
  readonly holes: readonly Hole[];
}

export interface Lettered {
  readonly letter: string;
  readonly holes: readonly Hole[];
}

/** Rows along and across the part of some holes alike. */
function rowsIn(holes: readonly Hole[], spotOf: (hole: Hole) => InPart, wayOf: (hole: Hole) => InPart) {
  return ([0, 1] as const).flatMap((axis) => {
    const beside = holes.filter((hole) => Math.abs(wayOf(hole)[axis]) < 0.95);
    return together(rowsOf(beside, spotOf, axis)).map((found) => ({ ...found, axis }));
  });
}

/** Holes alike in sets that have a letter each: those of one row, or of rows with the same numbers, and what stands in no row. */
export function setsOf(
  holes: readonly Hole[],
  spotOf: (hole: Hole) => InPart,
  wayOf: (hole: Hole) => InPart,
): readonly (readonly Hole[])[] {
  const free = new Set(holes);
  const sets = rowsIn(holes, spotOf, wayOf).map(({ points }) => {
    const own = points.filter((hole) => free.has(hole));
    for (const hole of own) free.delete(hole);
    return own;
  });
  return [...sets, [...free]].filter((set) => set.length > 0);
}

/** The rows of all holes, those with the same numbers told once; `kinds`: holes alike, and the sets that they fall into. */
export function laddersOf(
  kinds: readonly (readonly Lettered[])[],
  spotOf: (hole: Hole) => InPart,
  wayOf: (hole: Hole) => InPart,
): readonly Ladder[] {
  const ladders: Ladder[] = [];
  for (const sets of kinds)
    for (const { axis, row, points } of rowsIn(
      sets.flatMap(({ holes }) => holes),
      spotOf,
      wayOf,
    )) {
      const letters = lettersOf(sets, { row, points });
      const i = ladders.findIndex((other) => other.axis === axis && sameRow(other.row, row));
      const there = ladders[i];
      if (there)
        ladders[i] = {
          ...there,
          letters: [...new Set([...there.letters, ...letters])],
          holes: [...there.holes, ...points],
        };
      else ladders.push({ axis, row, letters, holes: points });
    }
  return ladders;
}

/** Of the sets that have most of a row. */
function lettersOf(sets: readonly Lettered[], { points }: Found<Hole>): readonly string[] {
  const shares = sets.map(({ letter, holes }) => ({ letter, share: holes.filter((h) => points.includes(h)).length }));
  const most = Math.max(...shares.map(({ share }) => share));
  return shares.filter(({ share }) => share === most).map(({ letter }) => letter);
}

/** The ladder's hole at an end of its row that comes farthest in a direction of the part's frame. */
export function farthest(
  { axis, row, holes }: Ladder,
  end: "from" | "to",
  spotOf: (hole: Hole) => InPart,
  way: InPart,
): Hole | null {
  const there = holes.filter((hole) => Math.abs(spotOf(hole)[axis] - row[end]) < 1e3);
  return there.reduce<Hole | null>(
    (best, hole) => (best === null || dot(spotOf(hole), way) > dot(spotOf(best), way) ? hole : best),
    null,
  );
}
