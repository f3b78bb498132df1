/** Where the jaws of a clamp reach: its bar runs beside what it presses together, and needs a free way there. Elsewhere a caul presses. */
import { inches, type Length } from "../../../units/length.ts";
import { add, half, less, max, min, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, otherAxes } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";

/** The clamps over one joint: where each presses, across their direction, and along which of the two other axes they stand in a row. */
export interface ClampLine {
  readonly axis: AxisIndex;
  readonly joint: Joint;
  /** What they press on, so that the joint closes. */
  readonly part: string;
  readonly points: readonly (readonly Length[])[];
  readonly long: number;
}

export interface Spot {
  readonly at: readonly Length[];
  /** It presses on the end of a caul. */
  readonly caul: boolean;
  /** That lies over the whole, from edge to edge. */
  readonly whole: boolean;
}

export interface Reached {
  readonly spots: readonly Spot[];
  /** How much of the line no jaws reach: its middle between clamps at its ends, or more. */
  readonly beyond: "none" | "middle" | "all";
}

/** How far the jaws reach in from the bar in steps of 1 in, and half of what the bar is thick. Common practice, no source. */
const THROAT = 4;
const BAR = inches(1, 2);
/** So far from its end a caul is clamped. Common practice, no source. */
const END = inches(2);

/** Whether a bar along an axis finds a free way near enough to a place across it. */
export function barReaches(parts: readonly Part[], axis: AxisIndex, at: readonly Length[]): boolean {
  const others = otherAxes(axis);
  const isFree = (spot: readonly Length[]): boolean =>
    parts.every(({ body }) =>
      others.some((i, k) => {
        const here = spot[k] as Length;
        return !less(body.low[i], add(here, BAR)) || !less(subtract(here, BAR), body.high[i]);
      }),
    );
  return WAYS.some((by) => isFree(at.map((value, k) => add(value, by[k] as Length))));
}

const WAYS: readonly (readonly Length[])[] = Array.from({ length: 2 * THROAT + 1 }, (_, i) => i - THROAT).flatMap(
  (a, _, all) => all.filter((b) => a * a + b * b <= THROAT * THROAT).map((b) => [inches(a), inches(b)]),
);

/**
 * What presses on a joint where bars reach some of its places only: where they reach both its ends, a caul under the clamps there; else one from
 * side to side of the whole, clamped at its ends. `isPressed`: a clamp on another joint that is near enough; `past`: along what a bar runs at a place.
 */
export function reachedOf(
  parts: readonly Part[],
  { axis, points, long }: ClampLine,
  isPressed: (at: readonly Length[]) => boolean,
  past: (at: readonly Length[]) => readonly Part[],
): Reached {
  const reached = points.map((at) => barReaches(past(at), axis, at));
  const out = points.filter((at, i) => !reached[i] && !isPressed(at));
  const spots = points.filter((_, i) => reached[i]);
  const [first] = out;
  if (!first) return { spots: spots.map((at) => ({ at, caul: false, whole: false })), beyond: "none" };
  if (reached[0] && reached.at(-1))
    return { spots: spots.map((at) => ({ at, caul: true, whole: false })), beyond: "middle" };
  const i = otherAxes(axis)[long] as AxisIndex;
  const low = parts.map(({ body }) => body.low[i]).reduce(min);
  const high = parts.map(({ body }) => body.high[i]).reduce(max);
  const ends = [add(low, END), subtract(high, END)].map((end) => first.map((value, k) => (k === long ? end : value)));
  return {
    spots: [
      ...ends.map((at) => ({ at, caul: true, whole: true })),
      ...spots.map((at) => ({ at, caul: false, whole: false })),
    ],
    beyond: "all",
  };
}

/** Nearer than this to each other, one clamp presses on both. */
const NEAR = half(inches(8));
export const isNear = (a: readonly Length[], b: readonly Length[]): boolean =>
  a.every((value, i) => Math.abs(toNumber(subtract(value, b[i] as Length))) < toNumber(NEAR));
