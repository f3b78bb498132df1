/** Two columns, filled from the left. What belongs together stays on one page, where it may go over from one column into the other. */
import type { Frame } from "../style.ts";
import type { Atom } from "./atom.ts";
import { blank, type FlowAtom, type Sheet } from "./sheet.ts";

/** Atoms that stay on one page. */
export type Unit = readonly FlowAtom[];

export interface Columns {
  /** White space between the columns. */
  readonly gap: number;
  /** White space above a unit that is not the first of its column. */
  readonly between: number;
  readonly units: readonly Unit[];
}

export const columnWidth = (width: number, gap: number): number => Math.floor((width - gap) / 2);

/** A unit goes over into the next column only where so much of this one is left for it. */
const WORTH_PARTING = 0.3;
/** The last page is filled no higher than it must be, to so many points. */
const EVEN = 8;

interface Spot {
  readonly atom: FlowAtom;
  readonly column: 0 | 1;
  readonly y: number;
}

interface Filled {
  readonly spots: readonly Spot[];
  /** The first unit that does not go in. */
  readonly next: number;
}

/** Whether the first unit goes below what takes up the page but for `height`. */
export const holdsFirst = (columns: Columns, height: number): boolean =>
  height > 0 && (columns.units.length === 0 || fill(columns, 0, height).next > 0);

/** Puts the units below what is placed on the last sheet, and on further ones. */
export function inColumns(columns: Columns, kind: string, sheets: Sheet[], frame: Frame): void {
  const step = columnWidth(frame.width, columns.gap) + columns.gap;
  for (let from = 0; from < columns.units.length; ) {
    let sheet = sheets[sheets.length - 1] ?? blank(kind, frame.y);
    const top = sheet.placed.length === 0 ? frame.y : sheet.y + columns.between / 2;
    const { spots, next } = filled(columns, from, frame.y + frame.height - top, sheet.placed.length === 0);
    for (const { atom, column, y } of spots) {
      sheet.placed.push({ atom, x: frame.x + column * step, y: top + y });
      sheet.y = Math.max(sheet.y, top + y + atom.height);
      if (atom.of !== undefined && !sheet.of.includes(atom.of)) sheet.of.push(atom.of);
    }
    from = next;
    if (from < columns.units.length) {
      sheet = blank(kind, frame.y);
      sheets.push(sheet);
    }
  }
}

/** As many units as go in; on an empty page at least one. The columns of the last page end at about the same height. */
function filled(columns: Columns, from: number, height: number, empty: boolean): Filled {
  const most = fill(columns, from, height);
  if (most.next === from && empty) return forced(columns, from, height);
  if (most.next < columns.units.length) return most;
  for (let least = EVEN; least < height; least += EVEN) {
    const even = fill(columns, from, least);
    if (even.next === most.next) return even;
  }
  return most;
}

function fill({ units, between }: Columns, from: number, height: number): Filled {
  const spots: Spot[] = [];
  let [column, y]: [0 | 1, number] = [0, 0];
  for (let next = from; next < units.length; next++) {
    const runs = runsOf(units[next] ?? [], column, y === 0 ? 0 : y + between, height);
    if (runs === null) return { spots, next };
    for (const run of runs) {
      [column, y] = [run.column, run.y];
      for (const [i, atom] of run.atoms.entries()) {
        y += i === 0 ? 0 : atom.above;
        spots.push({ atom, column, y });
        y += atom.height;
      }
    }
  }
  return { spots, next: units.length };
}

interface Run {
  readonly atoms: Unit;
  readonly column: 0 | 1;
  readonly y: number;
}

/** Where a unit goes that would begin at `y` of a column; null where the page is full. */
function runsOf(unit: Unit, column: 0 | 1, y: number, height: number): readonly Run[] | null {
  const whole = heightOf(unit);
  if (whole <= height - y) return [{ atoms: unit, column, y }];
  if (column === 1) return null;
  const cut = height - y >= height * WORTH_PARTING || whole > height ? cutOf(unit, height - y) : 0;
  const rest = unit.slice(cut);
  if (cut > 1 && heightOf(rest) <= height)
    return [
      { atoms: unit.slice(0, cut), column, y },
      { atoms: rest, column: 1, y: 0 },
    ];
  return whole <= height ? [{ atoms: unit, column: 1, y: 0 }] : null;
}

/** How many atoms go into a height, without parting those that keep together. */
function cutOf(unit: Unit, height: number): number {
  let used = 0;
  let cut = 0;
  for (const [i, atom] of unit.entries()) {
    used += (i === 0 ? 0 : atom.above) + atom.height;
    if (used > height) break;
    if (!atom.keep) cut = i + 1;
  }
  return cut;
}

/** A unit that is longer than a page, cut where the left column ends. */
function forced(columns: Columns, from: number, height: number): Filled {
  const unit = columns.units[from] ?? [];
  const loose = unit.map((atom) => ({ ...atom, keep: false }));
  const cut = Math.max(1, cutOf(loose, height));
  const { spots } = fill({ ...columns, units: [unit.slice(0, cut)] }, 0, Infinity);
  const { spots: rest } = fill({ ...columns, units: [unit.slice(cut)] }, 0, Infinity);
  return { spots: [...spots, ...rest.map((spot) => ({ ...spot, column: 1 as const }))], next: from + 1 };
}

/** Of atoms one below the other; the space above the first is dropped. */
const heightOf = (atoms: readonly Atom[]): number =>
  atoms.reduce((sum, atom, i) => sum + (i === 0 ? 0 : atom.above) + atom.height, 0);
