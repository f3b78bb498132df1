/** Units that take up less, for a page that holds what it is to hold only by that. */
import { type Band, type Columns, endOf, nextOf, onPage, TIGHTNESS, type Unit } from "./bands.ts";

/** What of a page is free, and whether that is all of it. */
export interface Room {
  readonly height: number;
  readonly empty: boolean;
}

/** The units of a page as they are set, and where. */
export interface Filling {
  readonly units: readonly Unit[];
  readonly bands: readonly Band[];
  /** How often units were made to take up less. */
  readonly tight: ReadonlyMap<number, number>;
}

/** With units that take up less where one more goes in by that; the others stay as they are, or nearly. */
export function tightest(columns: Columns, from: number, { height, empty }: Room): Filling {
  const { units, tighter } = columns;
  const plain = { units, bands: onPage(columns, from, height, empty), tight: new Map() };
  const end = nextOf(plain.bands, from);
  if (!tighter || end >= endOf(columns)) return plain;
  const wanted = columns.until ?? end + 1;
  const near = (i: number): boolean => i >= from && i < wanted;
  const all = [units];
  for (const how of TIGHTNESS) {
    const looser = all.at(-1) as readonly Unit[];
    const tight = looser.map((unit, i) => (near(i) ? (tighter(i, how) ?? unit) : unit));
    const found = onPage({ ...columns, units: tight }, from, height, empty);
    if (nextOf(found, from) >= wanted)
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

/** `looser`: the loosest first. */
const timesTight = (set: Omit<Filling, "tight">, looser: readonly (readonly Unit[])[], from: number): Filling => {
  const times = (i: number): number => {
    const found = looser.findIndex((units) => units[i] === set.units[i]);
    return found < 0 ? looser.length : found;
  };
  const end = nextOf(set.bands, from);
  return { ...set, tight: new Map(set.units.slice(from, end).map((_, i) => [from + i, times(from + i)])) };
};
