/** A page that would stay white begins the next unit, which goes on on the page after it. */
import type { Columns, Parted, Tightness } from "./bands.ts";
import { endOf, evenPages, fullPages, type Planned, planned, shareLeft } from "./even.ts";
import { heightOf } from "./parting.ts";
import type { Room } from "./tight.ts";

/** Pages that are no whiter, as a share, are left so: what stays on one page is easier to follow. */
const WHITE = 0.3;
/** What begins a unit is tried in so many points less at a time. */
const LESS = 16;

/** The pages of all units. */
export function pagesOf(columns: Columns, roomOf: (page: number) => Room): readonly Planned[] {
  const done: Planned[] = [];
  for (let [rest, start] = [columns, 0]; ; ) {
    const room = (page: number): Room => roomOf(done.length + page);
    const full = fullPages(rest, start, room);
    const over = firstOver(rest, full, room);
    const even = evenPages(rest, full.slice(0, over?.page), room);
    if (over === null) return [...done, ...even];
    done.push(...even, over.planned);
    [rest, start] = [over.rest, over.next];
  }
}

interface Over {
  readonly page: number;
  /** That page with the beginning of one unit more. */
  readonly planned: Planned;
  /** The units with those pieces. */
  readonly rest: Columns;
  /** The piece that goes on on the page after it. */
  readonly next: number;
}

/** The first page that takes the beginning of a unit, where that is worth it; null where none has to, or can. */
function firstOver(
  columns: Columns,
  pages: readonly Planned[],
  roomOf: (page: number) => Room,
  worth = isWorth,
): Over | null {
  for (const [page, each] of pages.entries()) {
    const next = pages[page + 1]?.from;
    const room = roomOf(page);
    if (next === undefined || shareLeft(each, next, room) <= WHITE) continue;
    const used = columns.units.slice(each.from, next).reduce((sum, unit) => sum + heightOf(unit) + columns.between, 0);
    for (let most = 2 * room.height - used; ; most -= LESS) {
      const parted = columns.parted?.(next, most) ?? null;
      if (parted === null) break;
      const rest = withPieces(columns, next, parted);
      const found = planned({ ...rest, tighter: () => null }, each.from, next + 1, room);
      if (!found) continue;
      const over = { page, planned: found, rest, next: next + 1 };
      if (worth(columns, pages, over, roomOf)) return over;
      break;
    }
  }
  return null;
}

/** So many pages are looked at for whether anything is won; as much white as these shares of what it was, in all or on one that was half white, too. */
const AHEAD = 5;
const LESS_WHITE = 0.6;
const WHITEST = 0.75;
const HALF = 0.5;

/** Whether the pages after it, which may do the same, hold more, or leave much less white: else it would only move on. */
function isWorth(columns: Columns, pages: readonly Planned[], over: Over, roomOf: (page: number) => Room): boolean {
  const room = (i: number): Room => roomOf(over.page + i);
  const usual = pages.slice(over.page, over.page + 1 + AHEAD);
  const other = [over.planned];
  let { rest, next } = over;
  while (other.length < usual.length && next < rest.units.length) {
    const done = other.length;
    const further = (i: number): Room => room(done + i);
    const full = fullPages(rest, next, further, usual.length - done);
    const again = firstOver(rest, full, further, () => true);
    other.push(...full.slice(0, again?.page), ...(again ? [again.planned] : []));
    next = again ? again.next : reachedBy(full, next);
    rest = again?.rest ?? rest;
  }
  const further = next - (rest.units.length - columns.units.length) - reachedBy(usual, 0);
  if (further !== 0 || other.length < usual.length) return further > 0 || other.length < usual.length;
  const white = (all: readonly Planned[]): readonly number[] =>
    all.map((each, i) => shareLeft(each, endOf(each, each.from), room(i)));
  const square = (all: readonly number[]): number => all.reduce((sum, share) => sum + share * share, 0);
  const [less, more] = [white(other), white(usual)];
  return (
    square(less) < LESS_WHITE * square(more) ||
    (Math.max(...more) > HALF && Math.max(...less) < WHITEST * Math.max(...more))
  );
}

const reachedBy = (pages: readonly Planned[], from: number): number => {
  const last = pages.at(-1);
  return last ? endOf(last, last.from) : from;
};

/** The units with pieces in place of some, which are set as they are. */
function withPieces(columns: Columns, at: number, { pieces, instead }: Parted): Columns {
  const { units, again, goesOn, wide, crowded, tells, like, taller, tighter, parted, origin = (i) => i } = columns;
  const isPiece = (i: number): boolean => i >= at && i < at + pieces.length;
  const before = (i: number): number => (i < at ? i : isPiece(i) ? at : i - pieces.length + instead);
  const after = (i: number): number => (i <= at ? i : Math.max(at, i + pieces.length - instead));
  const likeOf = (i: number): number | null => {
    const first = isPiece(i) ? null : (like?.(before(i)) ?? null);
    return first === null ? null : after(first);
  };
  return {
    ...columns,
    units: units.toSpliced(at, instead, ...pieces),
    origin: (i) => origin(before(i)),
    ...(again && { again: (i: number) => again(before(i)) }),
    ...(goesOn && { goesOn: (i: number) => !isPiece(i) && goesOn(before(i)) }),
    ...(wide && { wide: (i: number) => (isPiece(i) ? [] : wide(before(i))) }),
    ...(like && { like: likeOf }),
    ...(crowded && { crowded: (i: number) => (isPiece(i) ? 0 : crowded(before(i))) }),
    ...(tells && { tells: (i: number) => tells(before(i)) }),
    ...(taller && { taller: (i: number) => (isPiece(i) ? null : taller(before(i))) }),
    ...(tighter && { tighter: (i: number, how: Tightness) => (isPiece(i) ? null : tighter(before(i), how)) }),
    ...(parted && { parted: (i: number, most: number) => (isPiece(i) ? null : parted(before(i), most)) }),
  };
}
