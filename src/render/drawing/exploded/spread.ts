/**
 * Takes the piece apart for a picture: every move of the work is undone, as far as it takes to clear what it moved into and a
 * gap more.
 */
import type { Vec } from "../../../geometry/types.ts";
import { dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { TOLERANCE } from "../../../units/index.ts";
import type { Move } from "./moves.ts";

export type Shifts = ReadonlyMap<string, Vec>;

/**
 * Where each part goes from its place, in units of 1/16 µm; `gap` is the clear space between what was together, so many times as
 * much along each axis as `stretch` says.
 */
export function spread(
  parts: readonly BuiltPart[],
  moves: readonly Move[],
  gap: number,
  stretch: Vec = [1, 1, 1],
): Shifts {
  const shifts = new Map<string, Vec>(parts.map(({ id }) => [id, [0, 0, 0]]));
  const solids = new Map(parts.map(({ id, solid }) => [id, solid]));
  const shift = (id: string): Vec => shifts.get(id) ?? [0, 0, 0];
  const boxes = (ids: readonly string[]): Bounds[] =>
    ids.flatMap((id) => {
      const solid = solids.get(id);
      return solid ? [{ low: plus(solid.low, shift(id)), high: plus(solid.high, shift(id)) }] : [];
    });
  for (const { parts: moving, into, along } of moves) {
    const away = times(along, -1);
    // What is moved stays centred on what it came from, though that may have been pulled apart sideways.
    const sideways = minus(mean(into.map(shift)), mean(moving.map(shift)));
    const level = minus(sideways, times(away, dot(sideways, away)));
    const apart = clearing(
      boxes(moving).map((b) => ({ low: plus(b.low, level), high: plus(b.high, level) })),
      boxes(into),
      away,
    );
    const by = plus(
      level,
      times(away, apart + gap * norm([away[0] * stretch[0], away[1] * stretch[1], away[2] * stretch[2]])),
    );
    for (const id of moving) shifts.set(id, plus(shift(id), by));
  }
  return shifts;
}

export interface Bounds {
  readonly low: Vec;
  readonly high: Vec;
}

/** How far the moving boxes must go along a unit vector until none overlaps a box that stands in its way: what only lies beside or behind that way is in none. */
export function clearing(moving: readonly Bounds[], standing: readonly Bounds[], away: Vec): number {
  return Math.max(0, ...moving.flatMap((m) => standing.map((s) => until(m, s, away))));
}

/** So far along the way one box overlaps the other last; 0 where it never does. */
function until(moving: Bounds, standing: Bounds, away: Vec): number {
  let [first, last] = [0, Number.POSITIVE_INFINITY];
  for (const i of [0, 1, 2] as const) {
    // So far along this direction they begin to overlap, and so far they no longer do.
    const [near, far] = [standing.low[i] - moving.high[i], standing.high[i] - moving.low[i]];
    if (Math.abs(away[i]) < STILL) {
      if (near >= -TOLERANCE || far <= TOLERANCE) return 0;
      continue;
    }
    const along = [near / away[i], far / away[i]] as const;
    first = Math.max(first, Math.min(...along));
    last = Math.min(last, Math.max(...along));
  }
  return first < last - TOLERANCE ? last : 0;
}

/** What moves less than this in a direction, as a share of its way, does not move in it. */
const STILL = 1e-9;

/** The farthest (`side` 1) or nearest (−1) corner of a box along a vector. */
export function reach({ low, high }: Bounds, along: Vec, side: 1 | -1): number {
  const part = (i: 0 | 1 | 2) => along[i] * (along[i] * side > 0 ? high[i] : low[i]);
  return part(0) + part(1) + part(2);
}

const mean = (vectors: readonly Vec[]): Vec =>
  times(
    vectors.reduce((a, b) => plus(a, b), [0, 0, 0] as Vec),
    1 / Math.max(1, vectors.length),
  );

/** Moves for a piece whose work is not known: outwards from its middle, each part square to its broad side. */
export function outwards(parts: readonly BuiltPart[]): readonly Move[] {
  const middles = parts.map(({ solid }) => times(plus(solid.low, solid.high), 0.5));
  const middle = mean(middles);
  const order = parts
    .map((part, i) => ({ part, from: minus(middles[i] ?? middle, middle) }))
    .sort((a, b) => dot(a.from, a.from) - dot(b.from, b.from));
  return order.slice(1).map(({ part, from }, i): Move => {
    const { low, high } = part.solid;
    const size = minus(high, low);
    // Where the part is thin and far out is where it comes off.
    const share = ([0, 1, 2] as const).map((k) => Math.abs(from[k]) / (size[k] || 1));
    const axis = share.indexOf(Math.max(...share));
    const sign = (from[axis] ?? 0) < 0 ? 1 : -1;
    const along: Vec = [axis === 0 ? sign : 0, axis === 1 ? sign : 0, axis === 2 ? sign : 0];
    return { parts: [part.id], into: order.slice(0, i + 1).map((o) => o.part.id), along };
  });
}
