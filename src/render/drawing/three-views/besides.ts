/** On which side of a view a place is measured, and together with what: only what stands in a row is told in one line. */
import { compare } from "../../../units/index.ts";
import type { SideName } from "../dimension/side.ts";
import { MATTERS, type Station } from "../dimension/stations.ts";
import type { Extent } from "../fit.ts";

export interface Beside {
  readonly side: SideName;
  /** From the side inwards; each with the places that belong to every row. */
  readonly rows: readonly (readonly Station[])[];
}

/** What runs across so much of the view belongs to every row that stands beside it. */
const THROUGH = 0.75;
/** By so much of the view a line must be nearer to the second side to be measured there. */
const NEARER = 0.15;
/** Of the shorter of two lines, beside the other: so much and they stand in a row. */
const ALONGSIDE = 0.5;
/** More rows on a side cannot be read. */
const MOST = 3;

export function besides(
  all: readonly Station[],
  { low, high }: Extent,
  sides: readonly [SideName, SideName],
): readonly [Beside, Beside] {
  const level = sides[0] === "below" || sides[0] === "above";
  const [from, to] = level ? [low[1], high[1]] : [low[0], high[0]];
  const out = (side: SideName, station: Station): number =>
    side === "below" || side === "left" ? station.low - from : to - station.high;
  const matters = all.filter(({ weight }) => weight >= MATTERS);
  const long = ({ low: start, high: end }: Station): number => end - start;
  const through = matters.filter((station) => long(station) >= THROUGH * (to - from));
  const others = matters.filter((station) => !through.includes(station));
  const second = others.filter((station) => out(sides[1], station) < out(sides[0], station) - NEARER * (to - from));
  const first = others.filter((station) => !second.includes(station));
  const rowsOf = (side: SideName, own: readonly Station[]): Station[][] => {
    const order = [...own].sort((a, b) => out(side, a) - out(side, b) || long(b) - long(a) || compare(a.at, b.at));
    const rows: Station[][] = [];
    for (const station of order) {
      const row = rows.find(([seed]) => seed && alongside(seed, station));
      if (row) row.push(station);
      else rows.push([station]);
    }
    return rows;
  };
  const sets = [rowsOf(sides[0], first), rowsOf(sides[1], second)] as const;
  const isBeside = (station: Station): boolean => sets[0].some(([seed]) => seed && alongside(seed, station));
  const alone = rowsOf(
    sides[0],
    through.filter((station) => !isBeside(station)),
  );
  const withThrough = (row: readonly Station[]): readonly Station[] => {
    const [seed] = row;
    const more = through.filter((station) => seed && !row.includes(station) && alongside(seed, station));
    return [...row, ...more].sort((a, b) => compare(a.at, b.at));
  };
  const [near, far] = sets.map((rows) => rows.slice(0, MOST).map(withThrough));
  return [
    { side: sides[0], rows: [...(near ?? []), ...alone.map(withThrough)] },
    { side: sides[1], rows: far ?? [] },
  ];
}

function alongside(a: Station, b: Station): boolean {
  const shared = Math.min(a.high, b.high) - Math.max(a.low, b.low);
  return shared >= ALONGSIDE * Math.min(a.high - a.low, b.high - b.low);
}
