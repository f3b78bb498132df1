/**
 * Two columns, filled from the left. What belongs together stays on one page, where it may go over from one column into the other.
 * Where that holds more, a page is filled in bands: two low columns, and below them two more.
 */
import type { Frame } from "../style.ts";
import { type Band, bandsIn, type Columns, columnWidth, nextOf, onPage, TIGHTNESS, type Unit } from "./bands.ts";
import { blank, type Sheet } from "./sheet.ts";
import { widened } from "./wide.ts";

export { type Columns, columnWidth, type Tightness, type Unit, type Wide } from "./bands.ts";

/** Whether the first unit goes below what takes up the page but for `height`. */
export const holdsFirst = (columns: Columns, height: number): boolean =>
  height > 0 && (columns.units.length === 0 || bandsIn(columns, 0, height).length > 0);

/** Puts the units below what is placed on the last sheet, and on further ones. */
export function inColumns(columns: Columns, kind: string, sheets: Sheet[], frame: Frame): void {
  const step = columnWidth(frame.width, columns.gap) + columns.gap;
  for (let from = 0; from < columns.units.length; ) {
    let sheet = sheets[sheets.length - 1] ?? blank(kind, frame.y);
    const top = sheet.placed.length === 0 ? frame.y : sheet.y + columns.between / 2;
    const room = frame.y + frame.height - top;
    const bands = tightest(columns, from, room, sheet.placed.length === 0);
    for (const band of widened(columns, from, room, bands) ?? bands) {
      const { tie } = columns;
      if (band.parted === from && tie) sheet.placed.push({ atom: tie(frame.width), x: frame.x, y: top + band.y });
      for (const { atom, column, y } of band.spots) {
        sheet.placed.push({ atom, x: frame.x + column * step, y: top + band.y + y });
        sheet.y = Math.max(sheet.y, top + band.y + y + atom.height);
        if (atom.of !== undefined && !sheet.of.includes(atom.of)) sheet.of.push(atom.of);
      }
      from = band.next;
    }
    if (from < columns.units.length) {
      sheet = blank(kind, frame.y);
      sheets.push(sheet);
    }
  }
}

/** With units that take up less where one more goes in by that; the others stay as they are, or nearly. */
function tightest(columns: Columns, from: number, height: number, empty: boolean): readonly Band[] {
  const plain = onPage(columns, from, height, empty);
  const { units, tighter } = columns;
  const end = nextOf(plain, from);
  if (!tighter || end >= units.length) return plain;
  const near = (i: number): boolean => i >= from && i <= end;
  const all = [units];
  for (const how of TIGHTNESS) {
    const looser = all.at(-1) as readonly Unit[];
    const tight = looser.map((unit, i) => (near(i) ? (tighter(i, how) ?? unit) : unit));
    const found = onPage({ ...columns, units: tight }, from, height, empty);
    if (nextOf(found, from) > end) return loosened({ ...columns, units: tight }, all, from, height, empty) ?? found;
    all.push(tight);
  }
  return plain;
}

/** As many units as tight ones, each as loose as it may be; `looser`: the loosest first. Null where none may be looser. */
function loosened(
  columns: Columns,
  looser: readonly (readonly Unit[])[],
  from: number,
  height: number,
  empty: boolean,
): readonly Band[] | null {
  const units = [...columns.units];
  const next = nextOf(onPage(columns, from, height, empty), from);
  let best: readonly Band[] | null = null;
  for (let i = from; i < next; i++)
    for (const set of looser) {
      const tight = units[i] as Unit;
      const loose = set[i] as Unit;
      if (loose === tight) break;
      units[i] = loose;
      const other = onPage({ ...columns, units }, from, height, empty);
      if (nextOf(other, from) >= next) {
        best = other;
        break;
      }
      units[i] = tight;
    }
  return best;
}
