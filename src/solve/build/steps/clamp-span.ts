/** Over how many parts a clamp reaches: over the two that it draws together, and past them to where there is room for its jaws. */
import { inches, type Length } from "../../../units/length.ts";
import { less, subtract, toNumber } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Slope } from "./slopes.ts";

interface Hit {
  readonly at: Length;
  readonly slope: Slope | null;
}

/** A part in the line of the clamp: where that comes into it and out of it. */
export interface Met {
  readonly part: Part;
  readonly low: Hit;
  readonly high: Hit;
}

export interface Reach {
  readonly low: Hit & { readonly part: Part };
  readonly high: Hit & { readonly part: Part };
}

/** Room for the fixed jaw of a bar clamp, and for the other with its screw and the hand that turns it. Common practice, no source. */
export const FIXED = inches(2);
const SCREW = inches(8);

/** `met`: all in its line; `own`: what it draws together. Null where there is nothing. */
export function reachedOver(met: readonly Met[], own: readonly Met[]): Reach | null {
  const ends = [false, true].map((high) => grown(met, outermost(own, high), high, FIXED));
  const [low, high] = ends as [Met | undefined, Met | undefined];
  if (!low || !high) return null;
  const [below, above] = [roomAt(met, low, false), roomAt(met, high, true)];
  // One end has room for the screw.
  const tight = Math.max(below, above) < toNumber(SCREW);
  const [from, to] = [
    tight && below <= above ? grown(met, low, false, SCREW) : low,
    tight && below > above ? grown(met, high, true, SCREW) : high,
  ] as [Met, Met];
  return { low: { ...from.low, part: from.part }, high: { ...to.high, part: to.part } };
}

const outermost = (own: readonly Met[], high: boolean): Met | undefined =>
  own.reduce<Met | undefined>((so, each) => (so && !isPast(each, so, high) ? so : each), undefined);

const isPast = (one: Met, other: Met, high: boolean): boolean =>
  high ? less(other.high.at, one.high.at) : less(one.low.at, other.low.at);

/** How far from the outer face of one another begins, outwards. */
const gap = (from: Met, to: Met, high: boolean): number =>
  toNumber(high ? subtract(to.low.at, from.high.at) : subtract(from.low.at, to.high.at));

/** On to whatever leaves less room than a jaw takes up. */
function grown(met: readonly Met[], end: Met | undefined, high: boolean, room: Length): Met | undefined {
  const next = end && met.find((each) => isPast(each, end, high) && gap(end, each, high) < toNumber(room));
  return next ? grown(met, next, high, room) : end;
}

const roomAt = (met: readonly Met[], end: Met, high: boolean): number =>
  met.filter((each) => isPast(each, end, high)).reduce((so, each) => Math.min(so, gap(end, each, high)), Infinity);
