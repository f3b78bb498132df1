import type { Axis, Face } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { add, compare, equal, half, less, max, min, type Rational, subtract, ZERO } from "../../units/rational.ts";
import type { Box, Direction, Point } from "../design.ts";

/** The three directions of the piece, in the order of x, y, z. */
export const AXES: readonly Axis[] = ["across", "deep", "up"];
export type AxisIndex = 0 | 1 | 2;
export const INDICES: readonly AxisIndex[] = [0, 1, 2];

const LOW: readonly Face[] = ["left", "front", "bottom"];
const HIGH: readonly Face[] = ["right", "back", "top"];

export const indexOf = (axis: Axis): AxisIndex => AXES.indexOf(axis) as AxisIndex;
export const axisAt = (index: AxisIndex): Axis => AXES[index] as Axis;
export const isFace = (word: string): word is Face =>
  (LOW as readonly string[]).includes(word) || (HIGH as readonly string[]).includes(word);
export const isAxis = (word: string): word is Axis => (AXES as readonly string[]).includes(word);
export const isHigh = (face: Face): boolean => HIGH.includes(face);
export const faceAxis = (face: Face): AxisIndex => (isHigh(face) ? HIGH : LOW).indexOf(face) as AxisIndex;
export const faceOf = (axis: AxisIndex, high: boolean): Face => (high ? HIGH : LOW)[axis] as Face;
export const opposite = (face: Face): Face => faceOf(faceAxis(face), !isHigh(face));
/** The outward normal of a face. */
export const normalOf = (face: Face): Direction => unit(faceAxis(face), isHigh(face) ? 1 : -1);

/** The unit vector along an axis. */
export const unit = (axis: AxisIndex, sign: number): Direction => [
  axis === 0 ? sign : 0,
  axis === 1 ? sign : 0,
  axis === 2 ? sign : 0,
];

export const otherAxes = (axis: AxisIndex): readonly [AxisIndex, AxisIndex] =>
  axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
export const thirdAxis = (a: AxisIndex, b: AxisIndex): AxisIndex => (3 - a - b) as AxisIndex;

export type Triple<T> = readonly [T, T, T];
export const triple = <T>(make: (axis: AxisIndex) => T): Triple<T> => [make(0), make(1), make(2)];
export const withAxis = <T>(values: Triple<T>, axis: AxisIndex, value: T): Triple<T> =>
  triple((i) => (i === axis ? value : values[i]));

export const facePosition = (box: Box, face: Face): Length => (isHigh(face) ? box.high : box.low)[faceAxis(face)];
export const extent = (box: Box, axis: AxisIndex): Length => subtract(box.high[axis], box.low[axis]);
export const middle = (box: Box, axis: AxisIndex): Length => half(add(box.low[axis], box.high[axis]));

/** The box common to both; some extent is negative where they lie apart. */
export const common = (a: Box, b: Box): Box => ({
  low: triple((i) => max(a.low[i], b.low[i])),
  high: triple((i) => min(a.high[i], b.high[i])),
});
export const enclosing = (a: Box, b: Box): Box => ({
  low: triple((i) => min(a.low[i], b.low[i])),
  high: triple((i) => max(a.high[i], b.high[i])),
});
/** How far two boxes stand apart along an axis; negative where they pass each other. */
export const roomAlong = (one: Box, other: Box, axis: AxisIndex): Length =>
  less(one.low[axis], other.low[axis])
    ? subtract(other.low[axis], one.high[axis])
    : subtract(one.low[axis], other.high[axis]);
/** What is left of a box where another takes one end of it over its whole section: nothing where it takes all, all where it takes anything else. */
export function boxWithout(box: Box, taken: Box): Box {
  const across = INDICES.filter(
    (i) => compare(taken.low[i], box.low[i]) > 0 || compare(taken.high[i], box.high[i]) < 0,
  );
  const [axis] = across;
  if (axis === undefined) return { ...box, high: box.low };
  if (across.length > 1) return box;
  if (compare(taken.low[axis], box.low[axis]) <= 0)
    return setFace(box, faceOf(axis, false), max(box.low[axis], taken.high[axis]));
  if (compare(taken.high[axis], box.high[axis]) >= 0)
    return setFace(box, faceOf(axis, true), min(box.high[axis], taken.low[axis]));
  return box;
}
export const sameBox = (a: Box, b: Box): boolean =>
  INDICES.every((i) => equal(a.low[i], b.low[i]) && equal(a.high[i], b.high[i]));
/** Has room inside. */
export const isSolidBox = (box: Box): boolean => INDICES.every((i) => compare(box.low[i], box.high[i]) < 0);

/** The box with one face moved outwards by `by` (inwards if negative). */
export const moveFace = (box: Box, face: Face, by: Length): Box => {
  const axis = faceAxis(face);
  return isHigh(face)
    ? { ...box, high: withAxis(box.high, axis, add(box.high[axis], by)) }
    : { ...box, low: withAxis(box.low, axis, subtract(box.low[axis], by)) };
};
/** The box with one face put at a position. */
export const setFace = (box: Box, face: Face, at: Length): Box => {
  const axis = faceAxis(face);
  return isHigh(face) ? { ...box, high: withAxis(box.high, axis, at) } : { ...box, low: withAxis(box.low, axis, at) };
};

export const point = (x: Rational, y: Rational, z: Rational): Point => [x, y, z];
/** from + distance along an axis. */
export const shift = (from: Point, axis: AxisIndex, by: Length): Point => withAxis(from, axis, add(from[axis], by));

/** Reflected in the plane coordinate = about. */
export const mirrorValue = (value: Length, about: Length): Length => subtract(add(about, about), value);
export const mirrorBox = (box: Box, axis: AxisIndex, about: Length): Box => ({
  low: withAxis(box.low, axis, mirrorValue(box.high[axis], about)),
  high: withAxis(box.high, axis, mirrorValue(box.low[axis], about)),
});
export const mirrorPoint = (p: Point, axis: AxisIndex, about: Length): Point =>
  withAxis(p, axis, mirrorValue(p[axis], about));
export const mirrorDirection = (d: Direction, axis: AxisIndex): Direction =>
  triple((i) => (i === axis ? (d[i] === 0 ? 0 : -d[i]) : d[i]));

export const ORIGIN: Point = [ZERO, ZERO, ZERO];

export const sameDirection = (a: Direction, b: Direction): boolean => a.every((c, i) => c === b[i]);

/** The axis that a direction runs along. */
export const axisOf = (direction: readonly number[]): AxisIndex => INDICES.find((i) => direction[i] !== 0) as AxisIndex;
