/** What stands nearest on one side of what goes into an opening. */
import type { Piece } from "../../../geometry/types.ts";
import { type Length, TOLERANCE } from "../../../units/length.ts";
import { absolute, add, equal, less, max, min, negate, rational, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, extent, INDICES, triple } from "../../design/space.ts";
import type { Box, Part } from "../../design.ts";

/** A piece of a part that stands still. */
export interface Wood {
  readonly part: Part;
  readonly piece: Box;
}

/** What goes in; `flat`: a door or a front, which goes by what stands beside nearly all of it. */
export interface Going {
  readonly box: Box;
  readonly parts: readonly Part[];
  readonly flat: boolean;
}

export const NEAR = rational(TOLERANCE);

/** Whether two boxes lie beside each other along an axis. */
export const lieBeside = (a: Box, b: Box, axis: AxisIndex): boolean =>
  INDICES.every((i) => i === axis || (less(add(a.low[i], NEAR), b.high[i]) && less(add(b.low[i], NEAR), a.high[i])));

/** The box around a piece of wood: beside a cut-out there are several. */
export const boxOfPiece = ({ low, high }: Piece): Box => ({
  low: triple((i) => rational(Math.round(low[i]))),
  high: triple((i) => rational(Math.round(high[i]))),
});

/** Those of which a measure is the least. */
const nearest = <T>(all: readonly T[], measure: (one: T) => Length): readonly T[] => {
  const least = all.map(measure).reduce<Length | null>((so, next) => (so ? min(so, next) : next), null);
  return least ? all.filter((one) => equal(measure(one), least)) : [];
};

/** So much of a door is bounded by what its opening is measured to: a block or a catch beside it bounds nothing. */
const NEARLY = 0.75;

/** The wood nearest to one side of what goes in; of a door or a front, so near that there is wood over nearly all of that side. */
export function bounding(
  around: readonly Wood[],
  { box, parts, flat }: Going,
  axis: AxisIndex,
  isHigh: boolean,
): readonly Wood[] {
  const side = isHigh ? "high" : "low";
  const off = ({ piece }: Wood): Length =>
    isHigh ? subtract(piece.low[axis], box.high[axis]) : subtract(box.low[axis], piece.high[axis]);
  // What lies farther in, as beads behind a frame do, passes what the outermost parts do not meet.
  const outer = parts.filter(({ blank }) => !less(NEAR, absolute(subtract(blank[side][axis], box[side][axis]))));
  const beside = around.filter(
    (one) => !less(off(one), negate(NEAR)) && outer.some(({ blank }) => lieBeside(blank, one.piece, axis)),
  );
  if (!flat) return nearest(beside, off);
  const thin = INDICES.reduce((best, i) => (less(extent(box, i), extent(box, best)) ? i : best));
  const along = INDICES.find((i) => i !== axis && i !== thin) ?? axis;
  const enough = NEARLY * toNumber(extent(box, along));
  const reached = beside.filter(
    (one) =>
      covered(
        beside.filter((other) => !less(off(one), off(other))),
        box,
        along,
      ) >= enough,
  );
  return nearest(reached, off);
}

/** How much of a box some wood lies beside, in a direction. */
function covered(all: readonly Wood[], box: Box, axis: AxisIndex): number {
  const spans = all
    .map(({ piece }) => [max(piece.low[axis], box.low[axis]), min(piece.high[axis], box.high[axis])].map(toNumber))
    .sort(([a = 0], [b = 0]) => a - b);
  let [sum, end] = [0, Number.NEGATIVE_INFINITY];
  for (const [from = 0, to = 0] of spans) {
    sum += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return sum;
}

/** The one that most of what goes in lies beside. */
export const broadest = (all: readonly Wood[], box: Box, axis: AxisIndex): Wood | undefined => {
  const beside = ({ piece }: Wood): number =>
    INDICES.reduce<number>((so, i) => {
      const common = toNumber(subtract(min(piece.high[i], box.high[i]), max(piece.low[i], box.low[i])));
      return i === axis ? so : so * common;
    }, 1);
  return all.reduce<Wood | undefined>((best, one) => (!best || beside(one) > beside(best) ? one : best), undefined);
};
