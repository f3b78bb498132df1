/** Where along a joint clamps stand. Common practice, no source. */
import {
  add,
  half,
  inches,
  type Length,
  less,
  max,
  multiply,
  rational,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import { type AxisIndex, common, extent, otherAxes, triple } from "../../design/space.ts";
import type { Box, Joint } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import type { ClampLine } from "./clamp-reach.ts";
import type { Work } from "./draft.ts";

/** One at each end of a long joint, 2 in from it, and others 8 in apart; one for a joint as narrow as a rail. */
export const NARROW = inches(6);
const END = inches(4);
const APART = inches(8);

/** Clamps over a joint of some length. */
export const clampsOver = (length: Length): number =>
  less(length, NARROW) ? 1 : Math.ceil(toNumber(subtract(length, END)) / toNumber(APART)) + 1;

/** A tongue with glue in its middle only: a clamp there, and one at each end. */
const BREADBOARD = 3;

/** How far two parts lie against each other along each axis: what leans, as it touches. */
export function overlapOf(work: Work, { parts: [a, b], contact }: Joint): Box {
  const [one, two] = [work.part(a), work.part(b)];
  if (!one.turned && !two.turned) return common(one.body, two.body);
  const points = contact.flatMap(({ polygons }) => polygons.flat());
  if (points.length === 0) return common(boxOf(one), boxOf(two));
  const bound = (choose: (...values: number[]) => number): Box["low"] =>
    triple((i) => rational(Math.round(points.map((p) => p[i]).reduce((x, y) => choose(x, y)))));
  return { low: bound(Math.min), high: bound(Math.max) };
}

/** Where clamps press on a joint, as they look along an axis: at even distances along its longer side. */
export function pointsOver(work: Work, joint: Joint, axis: AxisIndex): Pick<ClampLine, "points" | "long"> {
  const shared = overlapOf(work, joint);
  const meets = otherAxes(axis).map((i) => ({ low: shared.low[i], high: shared.high[i] }));
  const size = ({ low, high }: (typeof meets)[number]): Length => subtract(high, low);
  const long = meets.findIndex((each) => meets.every((other) => !less(size(each), size(other))));
  const all = clampsOver(size(meets[long] as (typeof meets)[number]));
  const n = joint.method === "breadboard end" ? Math.min(all, BREADBOARD) : all;
  const points = Array.from({ length: n }, (_, k) =>
    meets.map(({ low, high }, i) => {
      const [from, to] = i === long && n > 1 ? [add(low, half(END)), subtract(high, half(END))] : [low, high];
      const share = i === long && n > 1 ? rational(k, n - 1) : rational(1, 2);
      return add(from, multiply(subtract(to, from), share));
    }),
  );
  return { points, long };
}

/** How far two parts lie against each other, across the direction of the clamp. */
export function longest(work: Work, joint: Joint, axis: AxisIndex): Length {
  const shared = overlapOf(work, joint);
  return otherAxes(axis)
    .map((i) => extent(shared, i))
    .reduce(max, ZERO);
}
