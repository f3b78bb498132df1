/** A page that its columns leave hollow: heads over both columns, what goes with each in two columns below it. */
import { type Sizes, USUAL } from "./alike.ts";
import { type Band, type Columns, endOf, lowest, nextOf, type Wide } from "./bands.ts";

/** Columns filled to less than this share of a page leave room for wide heads. */
const FILLED = 0.9;
/** From a head to what is below it. */
const BELOW = 4;

/** The units of a page, and more where they go in, with the heads wide that gain most by it; null where the page is filled, or none goes in. */
export function widened(
  columns: Columns,
  from: number,
  height: number,
  bands: readonly Band[],
): { readonly bands: readonly Band[]; readonly sizes: Sizes } | null {
  const end = nextOf(bands, from);
  const { units, between, wide } = columns;
  if (!wide || end === from || end >= units.length || reach(bands) > FILLED * 2 * height) return null;
  const last = endOf(columns);
  const known = new Map<number, readonly Gained[]>();
  const alone = (i: number): readonly Gained[] => {
    const made = known.get(i) ?? wide(i).flatMap((set) => wideBand(columns, set, i, height) ?? []);
    known.set(i, made);
    return made;
  };
  const tight = tightened(columns, from, Math.min(end + 1, last));
  const best = (start: number, room: number): Filled => {
    let most: Filled = NOTHING;
    const take = ({ band, gain, wide: heads }: Gained): void => {
      if (band.height > room) return;
      const down = band.height + between;
      const further = best(band.next, room - down);
      const all = [band, ...further.bands.map((each) => ({ ...each, y: each.y + down }))];
      const found = { bands: all, gain: gain + further.gain, wide: [...heads, ...further.wide] };
      const more = nextOf(all, start) - nextOf(most.bands, start) || found.gain - most.gain;
      if (more > 0) most = found;
    };
    if (start <= end && start < last) for (const each of alone(start)) take(each);
    for (let to = start + 1; to <= Math.min(end + 1, last); to++) {
      const usual = lowest(columns, start, to, room);
      if (usual) take({ band: usual, gain: 0, wide: [] });
      const lower = tight && lowest(tight, start, to, room);
      if (lower) take({ band: lower, gain: -LOST * (to - start), wide: [] });
    }
    return most;
  };
  const found = best(from, height);
  if (found.gain <= 0 || nextOf(found.bands, from) < end) return null;
  return { bands: found.bands, sizes: new Map(found.wide.map(([i, larger]) => [i, { ...USUAL, larger }])) };
}

interface Filled {
  readonly bands: readonly Band[];
  readonly gain: number;
  readonly wide: Wides;
}
const NOTHING: Filled = { bands: [], gain: 0, wide: [] };
/** Units with wide heads, and how many times as large. */
type Wides = readonly (readonly [number, number])[];

interface Gained {
  readonly band: Band;
  /** The share of its area that it gains: two that are a little larger are better than one that is much larger. */
  readonly gain: number;
  readonly wide: Wides;
}

/** What a unit loses that is set lower for another beside it. */
const LOST = 0.1;

/** With units that take up less, where one of a page is crowded in its column and would gain by the room; else null. */
function tightened(columns: Columns, from: number, until: number): Columns | null {
  const { units, tighter, crowded } = columns;
  const isCrowded = (i: number): boolean => (crowded?.(i) ?? 0) > 0;
  if (!tighter || !units.slice(from, until).some((_, i) => isCrowded(from + i))) return null;
  const near = (i: number): boolean => i >= from && i < until && !isCrowded(i);
  return { ...columns, units: units.map((unit, i) => (near(i) ? (tighter(i, "less") ?? unit) : unit)) };
}

/** How far down both columns reach, together. */
export const reach = (bands: readonly Band[]): number =>
  bands.reduce((sum, { spots, over = 0 }) => {
    const low = ([0, 1] as const).map((of) =>
      Math.max(over, ...spots.flatMap(({ atom, column, y }) => (column === of ? [y + atom.height] : []))),
    );
    return sum + (low[0] ?? 0) + (low[1] ?? 0);
  }, 0);

/** So much more it counts for that others like it are told by it. */
const CITED = 2;
const isCited = ({ like, units }: Columns, unit: number): boolean =>
  like !== undefined && units.some((_, i) => i !== unit && like(i) === unit);

function wideBand(columns: Columns, { head, below, larger }: Wide, unit: number, height: number): Gained | null {
  const top = head.height + BELOW;
  const rest = lowest({ gap: columns.gap, between: columns.between, units: [below] }, 0, 1, height - top);
  if (!rest) return null;
  const spots = rest.spots.map((spot) => ({ ...spot, y: spot.y + top }));
  const band: Band = {
    y: 0,
    height: top + rest.height,
    over: head.height,
    spots: [{ atom: head, column: 0, y: 0 }, ...spots],
    parted: null,
    next: unit + 1,
  };
  const gain = (1 - 1 / (larger * larger)) * (isCited(columns, unit) ? CITED : 1) * (columns.tells?.(unit) ?? 1);
  return { band, gain, wide: [[unit, larger]] };
}
