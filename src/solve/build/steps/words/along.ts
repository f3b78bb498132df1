/** How one box lies on another along an axis, in words. */
import { isSame } from "../../../../units/length.ts";
import { equal, negate, subtract, toNumber } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, middle } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import type { Overhang } from "./overhang.ts";
import type { Seen } from "./seen.ts";

const NOT_HELD: Seen["inside"] = new Map();

/** "flush with the front", "standing 3 in past the left", "1 in from the front", "midway between the left and the right (3/4 in past each)" */
export function along(
  work: Work,
  part: Part["body"],
  base: Part["body"],
  axis: AxisIndex,
  covers: Overhang | null = null,
  held: Seen["inside"] = NOT_HELD,
): string {
  const name = (high: boolean): string => `the ${held.get(faceOf(axis, high)) ?? faceOf(axis, high)}`;
  const level = (high: boolean): string => {
    const mate = held.get(faceOf(axis, high));
    return `${mate && !mate.startsWith(OUTSIDE) ? "against" : "flush with"} ${name(high)}`;
  };
  const { low, high } = insideOf(part, base, axis);
  // What covers everything is measured from the outside, where a rule reaches.
  if (covers && coversMore(part, base, axis, covers))
    return `midway between ${name(false)} and ${name(true)} (${work.place(covers.past)} past ${named(work, covers, axis, held)} at each)`;
  const [side, both] = sidesTold(part, base, axis);
  const near = side ? high : low;
  if (both === undefined) {
    if (near.n === 0n) return level(side === true);
    return near.n > 0n
      ? `${work.place(near)} from ${name(side === true)}`
      : `standing ${work.place(negate(near))} past ${name(side === true)}`;
  }
  if (near.n === 0n) return `${level(false)} and ${name(true)}`;
  const each = near.n > 0n ? `${work.place(near)} from each` : `${work.place(negate(near))} past each`;
  return `midway between ${name(false)} and ${name(true)} (${each})`;
}

/** How far a part lies inside of the faces of another. */
const insideOf = (part: Part["body"], base: Part["body"], axis: AxisIndex) => ({
  low: subtract(part.low[axis], base.low[axis]),
  high: subtract(base.high[axis], part.high[axis]),
});

/** The sides that a place is told from, true for the higher: what it is flush with, both where it lies midway, else the nearer. */
export function sidesTold(part: Part["body"], base: Part["body"], axis: AxisIndex): readonly boolean[] {
  const { low, high } = insideOf(part, base, axis);
  if (low.n === 0n || high.n === 0n) return [...(low.n === 0n ? [false] : []), ...(high.n === 0n ? [true] : [])];
  if (equal(middle(part, axis), middle(base, axis))) return [false, true];
  return [Math.abs(toNumber(low)) > Math.abs(toNumber(high))];
}

/** It reaches, by itself, past more than the part that it comes on. */
export function coversMore(part: Part["body"], base: Part["body"], axis: AxisIndex, covers: Overhang | null): boolean {
  const { low, high } = insideOf(part, base, axis);
  if (!covers || !isSame(part.low[axis], covers.over.low) || !isSame(part.high[axis], covers.over.high)) return false;
  return low.n !== 0n && high.n !== 0n && !(equal(negate(low), covers.past) && equal(low, high));
}

/** Stands before what is not a part but the outside of parts. */
export const OUTSIDE = "outside of ";

/** What a side is named by already is its outside. */
const named = (work: Work, { outer }: Overhang, axis: AxisIndex, held: Seen["inside"]): string =>
  outer.some((id) => [false, true].some((high) => held.get(faceOf(axis, high))?.endsWith(`(${work.line(id).mark})`)))
    ? "the outside"
    : listed(work, outer);
