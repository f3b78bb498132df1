import { circlePoint } from "../../../geometry/index.ts";
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { add, divide, multiply, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";

/**
 * Curves as flats. Every flat keeps within 0.05 mm of the true arc and leaves wood rather than taking it: an arc that wood bulges out
 * to has its flats outside, one cut into wood has them inside what is cut. Corners lie on whole units of 1/16 µm from where the arc
 * begins, so that equal curves are equal wherever they are, and mirror images are mirrored.
 */

/** Two distances: from one side of the corner, and from the other. */
export type Stop = readonly [Length, Length];

const FLAT = 0.05 * UNITS_PER_MM;
/** A flat turns by no more than this, so that small curves look round as well. */
const MOST_TURN = Math.PI / 12;

/** Radians between two flats of a circle whose corners are FLAT away from it. The sagitta of a turn t is r t² / 8, and a little more. */
const turnOf = (radius: Length): number => Math.min(MOST_TURN, 0.99 * Math.sqrt((8 * FLAT) / toNumber(radius)));

const quarterSteps = (radius: Length): number => Math.ceil(Math.PI / 2 / turnOf(radius));

/** A quarter circle that rounds the corner of the wood: the corners of the flats outside it, from the first side to the second. */
export function roundedOff(radius: Length): readonly Stop[] {
  const n = quarterSteps(radius);
  const reach = 1 / circlePoint(1, 8 * n)[0];
  return mirrored(n, (k) => {
    const [cos, sin] = circlePoint(2 * k + 1, 8 * n);
    const away = (part: number): Length => whole(Math.floor, toNumber(radius) * (1 - reach * part));
    return [k === 0 ? ZERO : away(cos), away(sin)];
  });
}

/** A quarter circle in the corner of an opening: the corners of the flats on it, from the first side to the second. */
export function roundedIn(radius: Length): readonly Stop[] {
  const n = quarterSteps(radius);
  return mirrored(n + 1, (k) => {
    if (k === 0) return [ZERO, radius];
    const [cos, sin] = circlePoint(k, 4 * n);
    return [whole(Math.ceil, toNumber(radius) * (1 - cos)), whole(Math.ceil, toNumber(radius) * (1 - sin))];
  });
}

/** The second half is the first one with its two distances exchanged. The one in the middle has two equal ones. */
function mirrored(count: number, stop: (k: number) => Stop): readonly Stop[] {
  return Array.from({ length: count }, (_, k): Stop => {
    const other = count - 1 - k;
    if (k < other) return stop(k);
    const [a, b] = stop(other);
    return k === other ? [a, a] : [b, a];
  });
}

/** The radius of the arc over a chord. */
export const radiusOf = (width: Length, rise: Length): Length =>
  divide(add(multiply(multiply(width, width), rational(1, 4)), multiply(rise, rise)), multiply(rise, rational(2)));

/**
 * An arc over a chord, at most half a circle: corners on it as [along the chord from its middle, rise], from end to end. They are
 * spaced by equal steps of the tangent of half the angle, which is rise over half the chord at the ends.
 */
export function overChord(width: Length, rise: Length): readonly Stop[] {
  const radius = radiusOf(width, rise);
  const steepest = (2 * toNumber(rise)) / toNumber(width);
  const n = Math.max(2, Math.ceil((2 * steepest) / turnOf(radius)));
  const r = toNumber(radius);
  const half: Stop = [multiply(width, rational(1, 2)), ZERO];
  const right = Array.from({ length: n }, (_, i): Stop => {
    if (i === 0) return [ZERO, rise];
    const t = (steepest * i) / n;
    const sin = (2 * t) / (1 + t * t);
    const lost = (2 * t * t) / (1 + t * t);
    return [whole(Math.floor, r * sin), subtract(rise, whole(Math.ceil, r * lost))];
  });
  const left = right.slice(1).map(([along, up]): Stop => [subtract(ZERO, along), up]);
  return [[subtract(ZERO, half[0]), ZERO], ...left.toReversed(), ...right, half];
}

const whole = (rounded: (value: number) => number, value: number): Length => rational(rounded(value));
