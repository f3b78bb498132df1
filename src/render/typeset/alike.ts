/** Units of one page that show the same, or mirror images, are set in one size. */
import { type Columns, TIGHTNESS, type Unit } from "./bands.ts";

/** How large a unit is set. */
export interface Size {
  /** How often it was made to take up less: 0, 1 or 2 times. */
  readonly tight: number;
  /** How many times as large as in a column its head shows something: 1 in a column. */
  readonly larger: number;
  /** So many points its head is higher. */
  readonly more: number;
}

export interface SizeOnPage extends Size {
  readonly page: number;
}

export const USUAL: Size = { tight: 0, larger: 1, more: 0 };

/** Units by their index; others are set as the page has it. */
export type Sizes = ReadonlyMap<number, Size>;

/** No unit larger than its limit. */
export function within(columns: Columns, limits: Sizes): Columns {
  const { units, tighter, wide, taller } = columns;
  const tight = (unit: Unit, i: number): Unit => {
    const how = TIGHTNESS[(limits.get(i)?.tight ?? 0) - 1];
    return how === undefined ? unit : (tighter?.(i, how) ?? unit);
  };
  return {
    ...columns,
    units: units.map(tight),
    ...(wide && {
      wide: (i: number) => wide(i).filter(({ larger }) => larger <= (limits.get(i)?.larger ?? Infinity) + SAME),
    }),
    ...(taller && {
      taller: (i: number) => {
        const found = taller(i);
        return found && { ...found, most: Math.min(found.most, limits.get(i)?.more ?? Infinity) };
      },
    }),
  };
}

/** Nobody sees so little. */
const SAME = 0.04;

/**
 * What each of the units that look alike is to be limited to, so that it is as small as the smallest on its page; null where they
 * are alike. What stands on another page is not seen beside it, and is better as large as it can be there.
 */
export function evened(columns: Columns, sizes: ReadonlyMap<number, SizeOnPage>, limits: Sizes): Sizes | null {
  const { like } = columns;
  if (!like) return null;
  const further = new Map(limits);
  const sets = new Map<string, number[]>();
  for (const i of columns.units.keys()) {
    const key = `${sizes.get(i)?.page ?? "none"} ${like(i) ?? i}`;
    sets.set(key, [...(sets.get(key) ?? []), i]);
  }
  let uneven = false;
  for (const set of sets.values()) {
    const all = set.map((i) => sizes.get(i) ?? USUAL);
    const least: Size = {
      tight: Math.max(...all.map(({ tight }) => tight)),
      larger: Math.min(...all.map(({ larger }) => larger)),
      more: Math.min(...all.map(({ more }) => more)),
    };
    // What is crowded in a column stands over both where it can, whatever those like it do.
    const isCrowded = set.some((i) => (columns.crowded?.(i) ?? 0) > 0);
    const same = ({ tight, larger, more }: Size): boolean =>
      tight === least.tight && (isCrowded || larger <= least.larger + SAME) && more === least.more;
    if (all.every(same)) continue;
    uneven = true;
    for (const i of set) further.set(i, isCrowded ? { ...least, larger: sizes.get(i)?.larger ?? 1 } : least);
  }
  return uneven ? further : null;
}
