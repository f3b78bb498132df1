/**
 * Places that a builder may want a dimension to: the faces of the parts' bodies and of their notches, the outside of what moves
 * as one, as far as a visible line shows them. What a place matters is how much of the view its lines run across.
 */
import type { PictureItem, Point2 } from "../../../geometry/types.ts";
import { compare, equal, type Length, TOLERANCE, toNumber } from "../../../units/index.ts";
import type { Extent } from "../fit.ts";
import type { Body } from "./bodies.ts";
import { fieldsOf, notchedAt, outsideOf, type SquareLine } from "./faces.ts";
import { levelEnds } from "./slanted.ts";

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
  /** Nothing ends here but a notch. */
  readonly notch?: true;
  /** A corner of what leans: no line square to the axis shows it. */
  readonly corner?: true;
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
 * in the field of a drawer or in the sockets of a joint is not told with them. Where the piece stands on the floor is told however
 * little of the view it takes, and where what leans ends, if that corner is seen.
 */
export function stations(all: readonly Body[], seen: Seen, shown: 0 | 1): readonly Station[] {
  const { lines, extent, axes } = seen;
  const across = shown === 0 ? 1 : 0;
  const [axis, acrossAxis] = [axes[shown], axes[across]];
  const there = new Set(lines.filter(({ visible }) => visible.length > 0).map(({ id }) => id));
  const bodies = all.filter(({ parts }) => parts.some(({ id }) => there.has(id)));
  const square = squareLines(lines, shown);
  const still = bodies.filter(({ moves }) => !moves).flatMap(({ parts }) => parts);
  const notches = still.flatMap((part) => notchedAt(part, axis));
  const outsides = bodies.map((body) => ({
    ...outsideOf(body.parts, axis),
    moves: body.moves,
    stands: acrossAxis === 2 && toNumber(outsideOf(body.parts, 2).low) - extent.low[across] <= TOLERANCE,
  }));
  const middle = (extent.low[shown] + extent.high[shown]) / 2;
  const isOuter = (face: Length, other: Length): boolean =>
    Math.abs(toNumber(face) - middle) >= Math.abs(toNumber(other) - middle) - TOLERANCE;
  const inField = fieldsOf(bodies, [axis, acrossAxis]);
  const places = [...outsides.flatMap(({ low, high }) => [low, high]), ...notches].sort(compare);
  const whole = extent.high[across] - extent.low[across];
  const faces = distinct(places).flatMap((place): Station[] => {
    const own = outsides.filter(({ low, high }) => equal(low, place) || equal(high, place));
    const gap = own.some(({ moves }) => moves);
    const notched = notches.some((n) => equal(n, place));
    const showing = square.filter(
      (line) => Math.abs(line.at - toNumber(place)) <= TOLERANCE && (gap || notched || !inField(line)),
    );
    if (showing.length === 0) return [];
    // What reaches farther out there stands there too.
    const stands =
      own.some((each) => each.stands) && own.every(({ low, high }) => isOuter(place, equal(low, place) ? high : low));
    const share = covered(showing) / whole;
    return [
      {
        at: place,
        weight: Math.min(1, Math.max(share, notched || stands ? MATTERS : 0)),
        low: Math.min(...showing.map((l) => l.low)),
        high: Math.max(...showing.map((l) => l.high)),
        gap,
        twins: own.map((sides) => (equal(sides.low, place) ? sides.high : sides.low)),
        ...(own.length === 0 && { notch: true as const }),
      },
    ];
  });
  const isSeen = (part: string, [u, v]: Point2): boolean =>
    lines.some(
      ({ id, visible }) =>
        id === part &&
        visible.some((run) =>
          run.some((end) => Math.abs(end[0] - u) <= 2 * TOLERANCE && Math.abs(end[1] - v) <= 2 * TOLERANCE),
        ),
    );
  const leaning = still
    .filter(({ id }) => there.has(id))
    .flatMap((part) => levelEnds(part, [axis, acrossAxis]).map((end) => ({ ...end, id: part.id })))
    .flatMap(({ from, to, at, id }): Station[] =>
      [from, to].flatMap((place, i) =>
        isSeen(id, shown === 0 ? [toNumber(place), at] : [at, toNumber(place)])
          ? [
              {
                ...{ at: place, weight: MATTERS, low: at, high: at, gap: false, corner: true as const },
                twins: [i === 0 ? to : from],
              },
            ]
          : [],
      ),
    );
  const told = faces.map(({ at }) => at);
  const more = leaning.filter(
    ({ at, low }, i) =>
      !told.some((place) => equal(place, at)) &&
      !leaning.slice(0, i).some((other) => equal(other.at, at) && other.low === low),
  );
  return [...faces, ...more].sort((a, b) => compare(a.at, b.at));
}

/** How much lines in one line cover, what lies on another counted once. */
function covered(lines: readonly SquareLine[]): number {
  let [sum, end] = [0, Number.NEGATIVE_INFINITY];
  for (const { low, high } of [...lines].sort((a, b) => a.low - b.low)) {
    sum += Math.max(0, high - Math.max(low, end));
    end = Math.max(end, high);
  }
  return sum;
}

const distinct = (sorted: readonly Length[]): readonly Length[] =>
  sorted.filter((place, i) => i === 0 || !equal(place, sorted[i - 1] ?? place));

const squareLines = (lines: readonly PictureItem[], shown: 0 | 1): readonly SquareLine[] => {
  const across = shown === 0 ? 1 : 0;
  return lines.flatMap(({ id, visible }) =>
    visible
      .filter(([a, b]) => Math.abs(a[shown] - b[shown]) <= TOLERANCE)
      .map(([a, b]) => ({
        id,
        at: (a[shown] + b[shown]) / 2,
        low: Math.min(a[across], b[across]),
        high: Math.max(a[across], b[across]),
      })),
  );
};
