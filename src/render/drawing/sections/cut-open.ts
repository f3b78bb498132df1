/** Where a piece is cut open so that most of what is inside shows, and what is left behind the cut. */
import { exactBounds } from "../../../geometry/bounds.ts";
import { axisPlane } from "../../../geometry/plane.ts";
import { cut, isEmpty } from "../../../geometry/solid.ts";
import type { Solid } from "../../../geometry/types.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { add, compare, type Length, multiply, rational, subtract } from "../../../units/index.ts";
import type { Outside } from "../three-views/aspect.ts";

export interface Opened {
  /** The place of the cut along its axis. */
  readonly at: Length;
  readonly parts: readonly { readonly id: string; readonly solid: Solid }[];
}

/** Where a cut is tried, as shares of the piece: near its middle first. */
const SHARES = [
  [1, 2],
  [5, 12],
  [7, 12],
  [1, 3],
  [2, 3],
  [1, 4],
  [3, 4],
] as const;

/** Cut square to an axis; what lies towards `away` of the cut is taken off. */
export function cutOpen(parts: readonly BuiltPart[], { low, high }: Outside, axis: 0 | 1, away: 1 | -1): Opened {
  const size = subtract(high[axis], low[axis]);
  const places = SHARES.map(([n, d]) => add(low[axis], multiply(size, rational(n, d))));
  const spans = parts.flatMap(({ solid, axes }) => {
    if (isEmpty(solid)) return [];
    const bounds = exactBounds(solid);
    return [
      { low: bounds.low[axis], high: bounds.high[axis], flat: axes.thickness === (axis === 0 ? "across" : "deep") },
    ];
  });
  // A board that is cut along its broad side hides what lies behind it, and shows nothing of itself.
  const worth = (at: Length): number => {
    const met = spans.filter((span) => compare(span.low, at) <= 0 && compare(at, span.high) <= 0);
    return met.length - 4 * met.filter(({ flat }) => flat).length;
  };
  const at = places.reduce((best, place) => (worth(place) > worth(best) ? place : best));
  const plane = axisPlane(axis, away, at);
  const left = parts.map(({ id, solid }) => ({ id, solid: cut(solid, plane) }));
  return { at, parts: left.filter(({ solid }) => !isEmpty(solid)) };
}
