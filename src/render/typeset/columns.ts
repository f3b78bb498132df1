/**
 * Two columns, filled from the left. What belongs together stays on one page, where it may go over from one column into the other.
 * Where that holds more, a page is filled in bands: two low columns, and below them two more.
 */
import type { Frame } from "../style.ts";
import { evened, type Size, type Sizes, USUAL, within } from "./alike.ts";
import { type Band, bandsIn, type Columns, columnWidth, nextOf, onPage, TIGHTNESS, type Unit } from "./bands.ts";
import { grown } from "./grown.ts";
import { blank, copyOf, type Sheet } from "./sheet.ts";
import { widened } from "./wide.ts";

export { type Columns, columnWidth, type Taller, type Tightness, type Unit, type Wide } from "./bands.ts";

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

function filled(columns: Columns, kind: string, sheets: Sheet[], frame: Frame): Sizes {
  const step = columnWidth(frame.width, columns.gap) + columns.gap;
  const all = new Map<number, Size>();
  for (let from = 0; from < columns.units.length; ) {
    let sheet = sheets[sheets.length - 1] ?? blank(kind, frame.y);
    const empty = sheet.placed.length === 0;
    const top = empty ? frame.y : sheet.y + columns.between / 2;
    const room = frame.y + frame.height - top;
    const { bands: plain, units, tight } = tightest(columns, from, room, empty);
    const { bands, sizes } =
      widened(columns, from, room, plain) ?? roomier({ ...columns, units }, from, room, empty, { bands: plain, tight });
    for (const [i, size] of sizes) all.set(i, size);
    for (const band of bands) {
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
  return all;
}

/** Pictures that were not made to take up less are higher where there is room. */
function roomier(
  columns: Columns,
  from: number,
  height: number,
  empty: boolean,
  { bands, tight }: Pick<Filling, "bands" | "tight">,
): { readonly bands: readonly Band[]; readonly sizes: Sizes } {
  const { taller } = columns;
  const loose = taller && ((i: number) => (tight.get(i) ? null : taller(i)));
  const found = grown({ ...columns, ...(loose && { taller: loose }) }, from, height, empty, bands);
  const usual = [...tight].map(([i, times]) => [i, { ...USUAL, tight: times }] as const);
  return { bands: found?.bands ?? bands, sizes: new Map([...usual, ...(found?.sizes ?? [])]) };
}

/** With units that take up less where one more goes in by that; the others stay as they are, or nearly. */
function tightest(columns: Columns, from: number, height: number, empty: boolean): Filling {
  const { units, tighter } = columns;
  const plain = { units, bands: onPage(columns, from, height, empty), tight: new Map() };
  const end = nextOf(plain.bands, from);
  if (!tighter || end >= units.length) return plain;
  const near = (i: number): boolean => i >= from && i <= end;
  const all = [units];
  for (const how of TIGHTNESS) {
    const looser = all.at(-1) as readonly Unit[];
    const tight = looser.map((unit, i) => (near(i) ? (tighter(i, how) ?? unit) : unit));
    const found = onPage({ ...columns, units: tight }, from, height, empty);
    if (nextOf(found, from) > end)
      return timesTight(
        loosened({ ...columns, units: tight }, all, from, height, empty) ?? { units: tight, bands: found },
        all,
        from,
      );
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
): Omit<Filling, "tight"> | null {
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
  return best && { units, bands: best };
}

/** The units of a page as they are set, and where. */
interface Filling {
  readonly units: readonly Unit[];
  readonly bands: readonly Band[];
  /** How often units were made to take up less. */
  readonly tight: ReadonlyMap<number, number>;
}

/** `looser`: the loosest first. */
const timesTight = (set: Omit<Filling, "tight">, looser: readonly (readonly Unit[])[], from: number): Filling => {
  const times = (i: number): number => {
    const found = looser.findIndex((units) => units[i] === set.units[i]);
    return found < 0 ? looser.length : found;
  };
  const end = nextOf(set.bands, from);
  return { ...set, tight: new Map(set.units.slice(from, end).map((_, i) => [from + i, times(from + i)])) };
};
