/**
 * Two columns, filled from the left. What belongs together stays on one page, where it may go over from one column into the other.
 * Where that holds more, a page is filled in bands: two low columns, and below them two more.
 */
import type { Frame } from "../style.ts";
import { evened, type SizeOnPage, type Sizes, USUAL, within } from "./alike.ts";
import { bandsIn, type Columns, columnWidth, nextOf } from "./bands.ts";
import type { Placed, Planned } from "./even.ts";
import { grown } from "./grown.ts";
import { pagesOf } from "./over.ts";
import { blank, copyOf, type Sheet } from "./sheet.ts";
import type { Room } from "./tight.ts";

export { type Columns, columnWidth, type Parted, type Taller, type Tightness, type Unit, type Wide } from "./bands.ts";

/** Whether the first unit goes below what takes up the page but for `height`. */
export const holdsFirst = (columns: Columns, height: number): boolean =>
  height > 0 && (columns.units.length === 0 || bandsIn(columns, 0, height).length > 0);

/** Puts the units below what is placed on the last sheet, and on further ones. What looks alike has one size. */
export function inColumns(columns: Columns, kind: string, sheets: Sheet[], frame: Frame): void {
  let limits: Sizes = new Map();
  for (let round = 1; ; round++) {
    const own = sheets.map(copyOf);
    const sizes = filled(within(columns, limits), kind, own, frame);
    const further = evened(columns, sizes, limits);
    if (further === null || round === ROUNDS) {
      sheets.splice(0, sheets.length, ...own);
      return;
    }
    limits = further;
  }
}

/** Where smaller ones move others to other pages so often, they stay as they are. */
const ROUNDS = 4;

function filled(columns: Columns, kind: string, sheets: Sheet[], frame: Frame): ReadonlyMap<number, SizeOnPage> {
  const step = columnWidth(frame.width, columns.gap) + columns.gap;
  let sheet = sheets[sheets.length - 1] ?? blank(kind, frame.y);
  const begun = sheet.placed.length > 0;
  const top = begun ? sheet.y + columns.between / 2 : frame.y;
  const rest: Room = { height: frame.y + frame.height - top, empty: !begun };
  const roomOf = (page: number): Room => (page === 0 ? rest : { height: frame.height, empty: true });
  const all = new Map<number, SizeOnPage>();
  for (const [page, planned] of pagesOf(columns, roomOf).entries()) {
    if (page > 0) {
      sheet = blank(kind, frame.y);
      sheets.push(sheet);
    }
    let { from } = planned;
    const { bands, sizes } = planned.wide ?? roomier(planned, roomOf(page));
    const { origin = (i: number) => i } = planned.columns;
    for (let i = from; i < nextOf(bands, from); i++) all.set(origin(i), { ...USUAL, ...sizes.get(i), page });
    const y = page === 0 ? top : frame.y;
    for (const band of bands) {
      const { tie } = columns;
      if (band.parted === from && tie) sheet.placed.push({ atom: tie(frame.width), x: frame.x, y: y + band.y });
      for (const { atom, column, y: down } of band.spots) {
        sheet.placed.push({ atom, x: frame.x + column * step, y: y + band.y + down });
        sheet.y = Math.max(sheet.y, y + band.y + down + atom.height);
        if (atom.of !== undefined && !sheet.of.includes(atom.of)) sheet.of.push(atom.of);
      }
      from = band.next;
    }
  }
  return all;
}

/** Pictures that were not made to take up less are higher where there is room. */
function roomier({ from, columns, filling }: Planned, { height, empty }: Room): Placed {
  const { taller } = columns;
  const { bands, units, tight } = filling;
  const loose = taller && ((i: number) => (tight.get(i) ? null : taller(i)));
  const found = grown({ ...columns, units, ...(loose && { taller: loose }) }, from, height, empty, bands);
  const usual = [...tight].map(([i, times]) => [i, { ...USUAL, tight: times }] as const);
  return { bands: found?.bands ?? bands, sizes: new Map([...usual, ...(found?.sizes ?? [])]) };
}
