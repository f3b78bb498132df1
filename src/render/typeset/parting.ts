/** Where a unit goes in two columns: below what is there, into the right one, or parted between its lines. */
import type { Atom } from "./atom.ts";
import type { FlowAtom } from "./sheet.ts";

/** Atoms that stay on one page. */
export type Unit = readonly FlowAtom[];

/** A unit goes over into the next column only where so much of this one is left for it. */
const WORTH_PARTING = 0.3;
/** No less than this of a unit stands in the right column, in points: about four lines. */
const LEAST_REST = 56;

export interface Run {
  readonly atoms: Unit;
  readonly column: 0 | 1;
  readonly y: number;
}

/** Where a unit would begin, and what room there is. */
interface Place {
  readonly column: 0 | 1;
  readonly y: number;
  readonly height: number;
  /** Above what goes over into the right column. */
  readonly tied: number;
  /** So many atoms at least stay in the left column when a unit is parted. */
  readonly least: number;
  /** Parted only where it is longer than a column. */
  readonly whole: boolean;
}

/** Where a unit goes; null where the columns are full. */
export function runsOf(unit: Unit, { column, y, height, tied, least, whole }: Place): readonly Run[] | null {
  const high = heightOf(unit);
  if (high <= height - y) return [{ atoms: unit, column, y }];
  if (column === 1) return null;
  const worth = !whole && (y === 0 || height - y >= height * WORTH_PARTING);
  const cut = worth || high > height ? cutOf(unit, Math.min(height - y, high - LEAST_REST)) : 0;
  const rest = unit.slice(cut);
  if (cut >= least && tied + heightOf(rest) <= height)
    return [
      { atoms: unit.slice(0, cut), column, y },
      { atoms: rest, column: 1, y: tied },
    ];
  return high <= height && y > 0 ? [{ atoms: unit, column: 1, y: 0 }] : null;
}

/** How many atoms go into a height, without parting those that keep together. */
export function cutOf(unit: Unit, height: number): number {
  let used = 0;
  let cut = 0;
  for (const [i, atom] of unit.entries()) {
    used += (i === 0 ? 0 : atom.above) + atom.height;
    if (used > height) break;
    if (!atom.keep) cut = i + 1;
  }
  return cut;
}

/** Of atoms one below the other; the space above the first is dropped. */
export const heightOf = (atoms: readonly Atom[]): number =>
  atoms.reduce((sum, atom, i) => sum + (i === 0 ? 0 : atom.above) + atom.height, 0);
