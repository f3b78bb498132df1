/** Which units of columns go on which page: no more pages than filled ones, and what stays white among these shared out evenly. */

import type { Sizes } from "./alike.ts";
import { type Band, type Columns, nextOf } from "./bands.ts";
import { heightOf } from "./parting.ts";
import { type Filling, type Room, tightest } from "./tight.ts";
import { reach, widened } from "./wide.ts";

/** So many units before where a filled page ends an even one may end. */
const BACK = 4;
/** Pages that are no whiter, as a share, stay as they are. */
const WHITE = 0.2;
/** What a unit that takes up less counts for, as a share of a page that is white. */
const TIGHT = 0.02;
/** What a head counts for that stays crowded in a column, where it would gain all by standing over both. */
const CROWDED = 0.08;
/** No more white than this is taken up by a higher picture, in points. */
const GROWN = 96;
/** Units so many times as high as the room do not go in by taking up less. */
const TOO_MUCH = 1.08;

/** What stands on one page. */
export interface Planned {
  readonly from: number;
  /** How they are set in columns. */
  readonly filling: Filling;
  /** How they are set with heads over both columns, where they are. */
  readonly wide: Placed | null;
  readonly columns: Columns;
}

/** Where each unit of a page stands, and how large. */
export interface Placed {
  readonly bands: readonly Band[];
  readonly sizes: Sizes;
}

/** Filled pages, what stays white among them shared out. The last keeps what it has, since other sections go below it. */
export function evenPages(
  columns: Columns,
  full: readonly Planned[],
  roomOf: (page: number) => Room,
): readonly Planned[] {
  const start = full[0]?.from ?? 0;
  const last = full.length - 1;
  const starts = full.map(({ from }) => from);
  const begin = starts.lastIndexOf(start);
  const costs = full.map((page, i) => costOf(page, starts[i + 1] ?? 0, roomOf(i)));
  const isGood = (page: Planned, i: number): boolean =>
    shareLeft(page, starts[i + 1] ?? 0, roomOf(i)) <= WHITE && crowdedOn(page, starts[i + 1] ?? 0) === 0;
  if (full.slice(begin, last).every((page, i) => isGood(page, begin + i))) return full;
  const known = new Map<string, Way>();
  const best = (page: number, from: number): Way => {
    if (page === last) return from === starts[last] ? { cost: 0, pages: full.slice(last) } : NONE;
    const key = `${page} ${from}`;
    const found = known.get(key) ?? among(page, from);
    known.set(key, found);
    return found;
  };
  const among = (page: number, from: number): Way => {
    const most = starts[page + 1] ?? 0;
    let way = NONE;
    for (let to = most; to > Math.max(from, most - BACK); to--) {
      const rest = best(page + 1, to);
      if (rest.cost >= way.cost) continue;
      const same = from === starts[page] && to === most;
      const made = same ? full[page] : planned(columns, from, to, roomOf(page));
      const cost = rest.cost + (same ? (costs[page] ?? 0) : made ? costOf(made, to, roomOf(page)) : Infinity);
      if (made && cost < way.cost) way = { cost, pages: [made, ...rest.pages] };
    }
    return way;
  };
  // What begins below other things and has no room there stays off.
  return [...full.slice(0, begin), ...best(begin, start).pages];
}

interface Way {
  readonly cost: number;
  readonly pages: readonly Planned[];
}
const NONE: Way = { cost: Infinity, pages: [] };

/** Pages that hold as many units as go in, one after the other; no more pages than `most`. */
export function fullPages(
  columns: Columns,
  start: number,
  roomOf: (page: number) => Room,
  most = Infinity,
): readonly Planned[] {
  const pages: Planned[] = [];
  for (let from = start; from < columns.units.length && pages.length < most; ) {
    const room = roomOf(pages.length);
    const filling = tightest(columns, from, room);
    const page = { from, filling, wide: widened(columns, from, room.height, filling.bands), columns };
    pages.push(relieved(page, room) ?? page);
    from = endOf(pages.at(-1) as Planned, from);
  }
  return pages;
}

/** What is crowded and tells so much, as the share that it would gain times how much it tells, is worth a page that holds less, if no more of it stays white. */
const WORTH = 1.1;
const WHITER = 0.45;

/** A page that ends sooner, for the heads that are crowded in its columns and tell much; null where there are none, or nothing helps. */
function relieved(page: Planned, room: Room): Planned | null {
  const { columns, from } = page;
  const end = endOf(page, from);
  const stuck = ({ wide }: Planned, to: number): boolean =>
    columns.units.slice(from, to).some((_, i) => !wide?.sizes.has(from + i) && worthOf(columns, from + i) >= WORTH);
  if (!stuck(page, end)) return null;
  for (let to = end - 1; to > from; to--) {
    const made = planned(columns, from, to, room);
    if (made && !stuck(made, to)) return shareLeft(made, to, room) <= WHITER ? made : null;
  }
  return null;
}

const worthOf = ({ crowded, tells }: Columns, unit: number): number => (crowded?.(unit) ?? 0) * (tells?.(unit) ?? 1);

/** The first unit that is not on a page, which begins with another. */
export const endOf = ({ wide, filling }: Pick<Planned, "wide" | "filling">, from: number): number =>
  nextOf(wide?.bands ?? filling.bands, from);

/** A page with the units from one to before another; null where they do not go in. */
export function planned(all: Columns, from: number, until: number, room: Room): Planned | null {
  if (used(all, from, until) > TOO_MUCH * 2 * room.height) return null;
  const columns = { ...all, until };
  const filling = tightest(columns, from, room);
  if (nextOf(filling.bands, from) < until) return null;
  return { from, filling, columns, wide: widened(columns, from, room.height, filling.bands) };
}

/** Large white spaces count for more than many small ones, and those that pictures can take up for less. */
function costOf(page: Planned, until: number, room: Room): number {
  const left = shareLeft(page, until, room);
  const white = page.wide ? left : share(used(page.columns, page.from, until), room);
  const times = [...page.filling.tight.values()].reduce((sum, each) => sum + each, 0);
  return left * left + (white * white) / 4 + TIGHT * TIGHT * times + CROWDED * crowdedOn(page, until);
}

/** What the heads of a page would gain that are crowded in its columns. */
const crowdedOn = ({ columns, from, wide }: Planned, until: number): number =>
  columns.units
    .slice(from, until)
    .reduce((sum, _, i) => sum + (wide?.sizes.has(from + i) ? 0 : (columns.crowded?.(from + i) ?? 0)), 0);

/** The share of a page that stays white when its pictures are higher. */
export function shareLeft({ columns, from, wide }: Planned, until: number, room: Room): number {
  if (wide) return 1 - reach(wide.bands) / (2 * room.height);
  const { units, taller } = columns;
  const more = units.slice(from, until).reduce((sum, _, i) => sum + Math.min(GROWN, taller?.(from + i)?.most ?? 0), 0);
  return share(used(columns, from, until) + more, room);
}

const share = (high: number, { height }: Room): number => Math.max(0, 1 - high / (2 * height));

const used = ({ units, between }: Columns, from: number, until: number): number =>
  units.slice(from, until).reduce((sum, unit) => sum + heightOf(unit) + between, -between);
