/**
 * Places that a builder may want a dimension to: the faces of the parts' bodies and of their notches, the outside of what moves
 * as one, as far as a visible line shows them. What a place matters is how much of the view its lines run across.
 */
import type { PictureItem } from "../../../geometry/types.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import {
  add,
  compare,
  equal,
  type Length,
  multiply,
  rational,
  TOLERANCE,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import type { Extent } from "../fit.ts";
import type { Body } from "./bodies.ts";

/** Along one axis of the piece, as it shows in one view. */
export interface Station {
  readonly at: Length;
  /** Share of the view's extent that visible lines there run across, 0 to 1. */
  readonly weight: number;
  /** Where these lines begin and end, across, in the plane of view. */
  readonly low: number;
  readonly high: number;
  /** The outside of a door or a drawer: gaps beside it are told, however narrow. */
  readonly gap: boolean;
}

/** Lines that run across less of the view than this are details, which are left to the drawing of the part. */
export const MATTERS = 0.2;

/** `shown` is the picture's axis: 0 for places across the page, 1 for places up it; `axis` is the piece's. Sorted. */
export function stations(
  bodies: readonly Body[],
  lines: readonly PictureItem[],
  extent: Extent,
  axis: 0 | 1 | 2,
  shown: 0 | 1,
): readonly Station[] {
  const across = shown === 0 ? 1 : 0;
  const square = lines
    .flatMap(({ visible }) => visible)
    .filter(([a, b]) => Math.abs(a[shown] - b[shown]) <= TOLERANCE)
    .map(([a, b]) => ({
      at: (a[shown] + b[shown]) / 2,
      low: Math.min(a[across], b[across]),
      high: Math.max(a[across], b[across]),
    }));
  const notches = bodies.flatMap(({ moves, parts }) => (moves ? [] : parts.flatMap((part) => notchedAt(part, axis))));
  const outsides = bodies.map((body) => ({ ...outsideOf(body.parts, axis), moves: body.moves }));
  const places = [...outsides.flatMap(({ low, high }) => [low, high]), ...notches].sort(compare);
  const whole = extent.high[across] - extent.low[across];
  return places
    .filter((place, i) => i === 0 || compare(place, places[i - 1] ?? place) !== 0)
    .flatMap((place): Station[] => {
      const there = square.filter(({ at }) => Math.abs(at - toNumber(place)) <= TOLERANCE);
      if (there.length === 0) return [];
      const seen = there.reduce((sum, { low, high }) => sum + high - low, 0);
      return [
        {
          at: place,
          weight: Math.min(1, Math.max(seen / whole, notches.some((n) => equal(n, place)) ? MATTERS : 0)),
          low: Math.min(...there.map((l) => l.low)),
          high: Math.max(...there.map((l) => l.high)),
          gap: outsides.some(({ moves, low, high }) => moves && (equal(low, place) || equal(high, place))),
        },
      ];
    });
}

function outsideOf(parts: readonly BuiltPart[], axis: 0 | 1 | 2): { readonly low: Length; readonly high: Length } {
  const sorted = (side: "low" | "high") => parts.map(({ body }) => body[side][axis]).sort(compare);
  const [lows, highs] = [sorted("low"), sorted("high")];
  return { low: lows[0] ?? ZERO, high: highs.at(-1) ?? ZERO };
}

/** The faces that a part's notches give it, across an axis. */
function notchedAt({ features }: BuiltPart, axis: 0 | 1 | 2): readonly Length[] {
  return features.flatMap((feature) => {
    if (feature.kind !== "notch") return [];
    const { origin, along, across, into, size } = feature;
    if (![along, across, into].every((way) => Number.isInteger(way[axis]))) return [];
    const reach = [along, across, into].map((way, i) => multiply(rational(way[axis]), size[i as 0 | 1 | 2]));
    return [origin[axis], reach.reduce(add, origin[axis])];
  });
}
