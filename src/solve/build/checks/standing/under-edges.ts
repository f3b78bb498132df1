/** Where fingers find the underside of a lid that is shut, from outside. Units of length. */
import type { Solid } from "../../../../geometry/index.ts";
import { UNITS_PER_MM } from "../../../../units/length.ts";

const MM = UNITS_PER_MM;
/** How far their tips go in, how high they are, and how wide two of them are side by side. Common practice, no source. */
const DEEP = [2 * MM, 5 * MM, 8 * MM];
const HIGH = 8 * MM;
const WIDE = 45 * MM;
/** The edge is looked at so often. */
const STEP = 3 * MM;

type Level = 0 | 1;
interface Span {
  readonly low: number;
  readonly high: number;
}

/** The wood in an upright line, piece by piece. */
const columnOf = (solids: readonly Solid[], x: number, y: number): readonly Span[] =>
  solids
    .flatMap(({ pieces }) => pieces)
    .flatMap(({ faces, low, high }): readonly Span[] => {
      if (x < low[0] || x > high[0] || y < low[1] || y > high[1]) return [];
      let [from, to] = [low[2], high[2]];
      for (const { plane } of faces) {
        const rest = plane.d - plane.a * x - plane.b * y;
        if (plane.c > 0) to = Math.min(to, rest / plane.c);
        else if (plane.c < 0) from = Math.max(from, rest / plane.c);
        else if (rest < 0) return [];
      }
      return from < to ? [{ low: from, high: to }] : [];
    });

/** Whether its lower edge on one side hangs free so far that it can be lifted there: `out` is the way out, along a level axis. */
export function canBeLifted(lid: readonly Solid[], under: readonly Solid[], axis: Level, out: 1 | -1): boolean {
  const along: Level = axis === 0 ? 1 : 0;
  const ends = (i: Level): Span => ({
    low: Math.min(...lid.map(({ low }) => low[i])),
    high: Math.max(...lid.map(({ high }) => high[i])),
  });
  const [edge, run] = [out > 0 ? ends(axis).high : ends(axis).low, ends(along)];
  let free = 0;
  for (let at = run.low + STEP / 2; at < run.high; at += STEP) {
    free = DEEP.every((deep) => isFree(edge - out * deep, at)) ? free + STEP : 0;
    if (free >= WIDE) return true;
  }
  return false;

  function isFree(level: number, at: number): boolean {
    const [x, y] = axis === 0 ? [level, at] : [at, level];
    const own = columnOf(lid, x, y);
    const bottom = Math.min(...own.map(({ low }) => low));
    const below = columnOf(under, x, y).filter(({ low }) => low < bottom);
    return own.length > 0 && below.every(({ high }) => bottom - high >= HIGH);
  }
}
