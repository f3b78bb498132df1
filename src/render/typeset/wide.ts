/** A page that its columns leave hollow: heads over both columns, what goes with each in two columns below it. */
import { type Band, type Columns, lowest, nextOf } from "./bands.ts";

/** Columns filled to less than this share of a page leave room for wide heads. */
const FILLED = 0.72;
/** From a head to what is below it. */
const BELOW = 4;

/** The units of a page, and more where they go in, with as many of the heads wide as go in; null where the page is filled, or none goes in. */
export function widened(
  columns: Columns,
  from: number,
  height: number,
  bands: readonly Band[],
): readonly Band[] | null {
  const end = nextOf(bands, from);
  const { units, between, wide } = columns;
  if (!wide || end === from || end >= units.length || reach(bands) > FILLED * 2 * height) return null;
  const known = new Map<number, Band | null>();
  const alone = (i: number): Band | null => {
    const found = known.get(i);
    if (found !== undefined) return found;
    const band = wideBand(columns, i, height);
    known.set(i, band);
    return band;
  };
  const best = (start: number, room: number): Filled => {
    let most: Filled = NOTHING;
    const take = (band: Band | null, heads: number): void => {
      if (!band || band.height > room) return;
      const down = band.height + between;
      const further = best(band.next, room - down);
      const all = [band, ...further.bands.map((each) => ({ ...each, y: each.y + down }))];
      const found = { bands: all, heads: heads + further.heads };
      const more = nextOf(all, start) - nextOf(most.bands, start) || found.heads - most.heads;
      if (more > 0) most = found;
    };
    if (start <= end && start < units.length) take(alone(start), 1);
    for (let to = start + 1; to <= Math.min(end + 1, units.length); to++) take(lowest(columns, start, to, room), 0);
    return most;
  };
  const found = best(from, height);
  return found.heads > 0 && nextOf(found.bands, from) >= end ? found.bands : null;
}

interface Filled {
  readonly bands: readonly Band[];
  readonly heads: number;
}
const NOTHING: Filled = { bands: [], heads: 0 };

/** How far down both columns reach, together. */
const reach = (bands: readonly Band[]): number =>
  bands.reduce((sum, { spots }) => {
    const low = ([0, 1] as const).map((of) =>
      Math.max(0, ...spots.flatMap(({ atom, column, y }) => (column === of ? [y + atom.height] : []))),
    );
    return sum + (low[0] ?? 0) + (low[1] ?? 0);
  }, 0);

function wideBand(columns: Columns, unit: number, height: number): Band | null {
  const set = columns.wide?.(unit);
  if (!set) return null;
  const { head, below } = set;
  const top = head.height + BELOW;
  const rest = lowest({ gap: columns.gap, between: columns.between, units: [below] }, 0, 1, height - top);
  if (!rest) return null;
  const spots = rest.spots.map((spot) => ({ ...spot, y: spot.y + top }));
  return {
    y: 0,
    height: top + rest.height,
    spots: [{ atom: head, column: 0, y: 0 }, ...spots],
    parted: null,
    next: unit + 1,
  };
}
