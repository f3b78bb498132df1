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
  /** The other faces of the bodies that end here. */
  readonly twins: readonly Length[];
}

/** Lines that run across less of the view than this are details, which are left to the drawing of the part. */
export const MATTERS = 0.2;

/** What is seen from one side. */
export interface Seen {
  readonly lines: readonly PictureItem[];
  readonly extent: Extent;
  /** Axes of the piece that run across and up the page. */
  readonly axes: readonly [0 | 1 | 2, 0 | 1 | 2];
}

/**
 * `shown` is the picture's axis: 0 for places across the page, 1 for places up it. Sorted. What shows through a pane of a door,
 * or in the field of a drawer, is not told with the sizes of the door: it belongs to what stands behind.
 */
export function stations(bodies: readonly Body[], { lines, extent, axes }: Seen, shown: 0 | 1): readonly Station[] {
  const across = shown === 0 ? 1 : 0;
  const [axis, acrossAxis] = [axes[shown], axes[across]];
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
  const moving = bodies
    .filter(({ moves }) => moves)
    .map(({ parts }) => [0, 1, 2].map((i) => outsideOf(parts, i as 0 | 1 | 2)));
  const places = [...outsides.flatMap(({ low, high }) => [low, high]), ...notches].sort(compare);
  const whole = extent.high[across] - extent.low[across];
  return places
    .filter((place, i) => i === 0 || compare(place, places[i - 1] ?? place) !== 0)
    .flatMap((place): Station[] => {
      const gap = outsides.some((own) => own.moves && (equal(own.low, place) || equal(own.high, place)));
      const before = gap ? [] : moving.filter((sides) => isWithin(sides[axis], place));
      const there = square.filter(
        ({ at, low, high }) =>
          Math.abs(at - toNumber(place)) <= TOLERANCE && !before.some((sides) => covers(sides[acrossAxis], low, high)),
      );
      if (there.length === 0) return [];
      const seen = there.reduce((sum, { low, high }) => sum + high - low, 0);
      const [low, high] = [Math.min(...there.map((l) => l.low)), Math.max(...there.map((l) => l.high))];
      return [
        {
          at: place,
          weight: Math.min(1, Math.max(seen / whole, notches.some((n) => equal(n, place)) ? MATTERS : 0)),
          low,
          high,
          gap,
          twins: outsides.flatMap((own) =>
            equal(own.low, place) ? [own.high] : equal(own.high, place) ? [own.low] : [],
          ),
        },
      ];
    });
}

interface Sides {
  readonly low: Length;
  readonly high: Length;
}

const isWithin = (sides: Sides | undefined, place: Length): boolean =>
  sides !== undefined && compare(sides.low, place) < 0 && compare(place, sides.high) < 0;
const covers = (sides: Sides | undefined, low: number, high: number): boolean =>
  sides !== undefined && toNumber(sides.low) <= low + TOLERANCE && high <= toNumber(sides.high) + TOLERANCE;

function outsideOf(parts: readonly BuiltPart[], axis: 0 | 1 | 2): Sides {
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
