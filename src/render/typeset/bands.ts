/** How many units go in two columns over a part of a page, and where each stands. */
import type { Atom } from "./atom.ts";
import { cutOf, runsOf, type Unit } from "./parting.ts";
import type { FlowAtom } from "./sheet.ts";

export type { Unit } from "./parting.ts";

export interface Columns {
  /** White space between the columns. */
  readonly gap: number;
  /** White space above a unit that is not the first of its column. */
  readonly between: number;
  readonly units: readonly Unit[];
  /** No unit from this one on goes on the page, that pages are filled evenly; as many as go in where it is left out. */
  readonly until?: number;
  /** Ties the columns together above the first unit of both, where it goes over into the right one. */
  readonly tie?: (width: number) => Atom;
  /** So far below that tie it goes on. */
  readonly tied?: number;
  /** Stands above what another unit, by its index, has in the right column, and above one that goes on from the page before. */
  readonly again?: (unit: number) => FlowAtom;
  /** Whether a unit, by its index, goes on with what the one before began. */
  readonly goesOn?: (unit: number) => boolean;
  /** Units go over only where they are longer than a column. */
  readonly whole?: true;
  /** The ways to set a unit, by its index, with its head over both columns, for a page that is not filled else. */
  readonly wide?: (unit: number) => readonly Wide[];
  /** What a unit, by its index, that is crowded in a column gains with its head over both, as a share of what it shows; 0 for others. */
  readonly crowded?: (unit: number) => number;
  /** So many times as much the gain of a unit, by its index, counts as that of one that tells little. */
  readonly tells?: (unit: number) => number;
  /** A unit, by its index, that can take up white space of its page; null where nothing is seen better by it. */
  readonly taller?: (unit: number) => Taller | null;
  /** The first unit that another, by its index, looks like: they are set in one size; null where it is like none before. */
  readonly like?: (unit: number) => number | null;
  /** A unit that takes up less, or less still, by its index, for a page that holds one more with it; null where there is none. */
  readonly tighter?: (unit: number, how: Tightness) => Unit | null;
  /** A unit, by its index, in pieces for several pages, the first no higher than so much; null where it cannot be parted. */
  readonly parted?: (unit: number, most: number) => Parted | null;
  /** The index that a unit had before any was parted; its own where that is left out. */
  readonly origin?: (unit: number) => number;
}

export interface Parted {
  readonly pieces: readonly Unit[];
  /** So many units, from the one that is parted on, which they take the place of. */
  readonly instead: number;
}

/** What stands over both columns, and what goes in them below it. */
export interface Wide {
  readonly head: FlowAtom;
  readonly below: Unit;
  /** How many times as large as in a column its head shows something. */
  readonly larger: number;
}

/** A unit whose first atom can be higher. */
export interface Taller {
  /** Nothing is gained by more, in points. */
  readonly most: number;
  readonly by: (more: number) => Unit | null;
}

/** The looser one is taken where it does. */
export const TIGHTNESS = ["less", "least"] as const;
export type Tightness = (typeof TIGHTNESS)[number];

export const columnWidth = (width: number, gap: number): number => Math.floor((width - gap) / 2);

/** Columns of which the right one is filled to less than this share of the left are levelled. */
const HOLLOW = 0.5;
/** Of what has the page for itself, this share: half a page would be blank else. */
const ALONE = 0.25;
/** What takes up this share of a column, and has the page for itself, goes over into the other. */
const LONG = 0.5;
/** The last page is filled no higher than it must be, to so many points. */
const EVEN = 8;

export interface Spot {
  readonly atom: FlowAtom;
  readonly column: 0 | 1;
  readonly y: number;
}

/** Two columns over a part of the page, `y` below the top of the first. */
export interface Band {
  readonly y: number;
  readonly height: number;
  readonly spots: readonly Spot[];
  /** So much of its top stands over both columns. */
  readonly over?: number;
  /** Which unit goes over into the right column, if any does. */
  readonly parted: number | null;
  /** The first unit that does not go in. */
  readonly next: number;
}

/** Before which unit the page ends at the latest. */
export const endOf = ({ until, units }: Columns): number => Math.min(until ?? units.length, units.length);

/** As many units as go in; on an empty page at least one. None is parted where as many go in whole, but for one beside an empty column. */
export function onPage(columns: Columns, from: number, height: number, empty: boolean): readonly Band[] {
  const bands = leastParted(columns, from, height, empty);
  const alone = bands.length === 1 && nextOf(bands, from) === from + 1;
  if (!alone || (bands[0]?.height ?? 0) < LONG * height || bands[0]?.spots.some(({ column }) => column === 1))
    return bands;
  const level = lowest(columns, from, from + 1, height);
  return level && level.parted !== null && !hollow(level, ALONE) ? [level] : bands;
}

function leastParted(columns: Columns, from: number, height: number, empty: boolean): readonly Band[] {
  const bands = filled(columns, from, height, empty);
  if (bands.every(({ parted }) => parted === null)) return bands;
  const whole = filled({ ...columns, whole: true }, from, height, empty);
  return nextOf(whole, from) >= nextOf(bands, from) ? whole : bands;
}

/** The columns of the last page end at about the same height. */
function filled(columns: Columns, from: number, height: number, empty: boolean): readonly Band[] {
  const all = endOf(columns);
  const whole = fill(columns, from, all, height);
  if (whole.next === all) return [lowest(columns, from, all, height) ?? whole];
  const bands = bandsIn(columns, from, height);
  if (nextOf(bands, from) > whole.next) return bands;
  if (whole.next === from) return empty ? [forced(columns, from, height)] : [];
  const level = hollow(whole) || isOneSided(whole, from);
  return [level ? (lowest(columns, from, whole.next, height) ?? whole) : whole];
}

/** Several units under each other, and nothing beside them. */
const isOneSided = ({ spots, next }: Band, from: number): boolean =>
  next > from + 1 && !spots.some(({ column }) => column === 1);

function hollow({ spots, parted }: Band, share = HOLLOW): boolean {
  const reach = (of: 0 | 1): number =>
    Math.max(0, ...spots.flatMap(({ atom, column, y }) => (column === of ? [y + atom.height] : [])));
  return parted !== null && reach(1) < share * reach(0);
}

export const nextOf = (bands: readonly Band[], from: number): number => bands.at(-1)?.next ?? from;

/** The bands that hold the most units in a height, as few of them as do it. */
export function bandsIn(columns: Columns, from: number, height: number): readonly Band[] {
  const known = new Map<string, Band | null>();
  const low = (start: number, end: number): Band | null => {
    const key = `${start} ${end}`;
    // A step of which next to nothing goes over is not worth a band.
    const found = known.get(key) ?? lowest(columns, start, end, height);
    const band = found && hollow(found) ? null : found;
    known.set(key, band);
    return band;
  };
  const best = (start: number, room: number): readonly Band[] => {
    let most: readonly Band[] = [];
    for (let end = start + 1; end <= endOf(columns); end++) {
      const band = low(start, end);
      if (band === null || band.height > room) break;
      const down = band.height + columns.between;
      const bands = [band, ...best(end, room - down).map((each) => ({ ...each, y: each.y + down }))];
      const more = nextOf(bands, start) - nextOf(most, start);
      if (more > 0 || (more === 0 && bands.length < most.length)) most = bands;
    }
    return most;
  };
  return best(from, height);
}

/** The units from `from` to before `to` in two columns, no higher than they must be; null where that is higher than `height`. */
export function lowest(columns: Columns, from: number, to: number, height: number): Band | null {
  // Two columns hold no more than twice their height.
  const all = columns.units.slice(from, to).flatMap((unit) => unit.map((atom) => atom.height));
  const half = all.reduce((a, b) => a + b, 0) / 2;
  for (let least = Math.max(1, Math.floor(half / EVEN)) * EVEN; least < height + EVEN; least += EVEN) {
    const even = fill(columns, from, to, Math.min(least, height));
    if (even.next === to) return even;
  }
  return null;
}

/** As many of the units from `from` to before `to` as two columns of a height hold. */
function fill(columns: Columns, from: number, to: number, height: number): Band {
  const { units, between, tied = 0, whole = false, again } = columns;
  const spots: Spot[] = [];
  let [column, y, low, parted]: [0 | 1, number, number, number | null] = [0, 0, 0, null];
  const made = (next: number): Band => ({ y: 0, height: low, spots, parted, next });
  for (let next = from; next < to; next++) {
    const least = to === from + 1 ? 1 : 2;
    const head = next === from ? null : (again?.(next) ?? null);
    const below = head ? head.height : tied;
    const opens = next === from && columns.goesOn?.(next) ? (again?.(next) ?? null) : null;
    if (opens) spots.push({ atom: opens, column: 0, y: 0 });
    const top = opens ? opens.height : y === 0 ? 0 : y + between;
    const place = { column, y: top, height, tied: below, least, whole };
    const runs = runsOf(units[next] ?? [], place);
    if (runs === null) return made(next);
    if (runs.length > 1) {
      parted = next;
      if (head) spots.push({ atom: head, column: 1, y: 0 });
    }
    for (const run of runs) {
      [column, y] = [run.column, run.y];
      for (const [i, atom] of run.atoms.entries()) {
        y += i === 0 ? 0 : atom.above;
        spots.push({ atom, column, y });
        y += atom.height;
      }
      low = Math.max(low, y);
    }
  }
  return made(to);
}

/** A unit that is longer than a page, cut where the left column ends. */
function forced(columns: Columns, from: number, height: number): Band {
  const unit = columns.units[from] ?? [];
  const loose = unit.map((atom) => ({ ...atom, keep: false }));
  const cut = Math.max(1, cutOf(loose, height));
  const { spots } = fill({ ...columns, units: [unit.slice(0, cut)] }, 0, 1, Infinity);
  const { spots: rest } = fill({ ...columns, units: [unit.slice(cut)] }, 0, 1, Infinity);
  const right = rest.map((spot) => ({ ...spot, column: 1 as const }));
  return { y: 0, height, spots: [...spots, ...right], parted: null, next: from + 1 };
}
