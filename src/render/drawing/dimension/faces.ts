/** Where the bodies of a piece end along an axis, and which lines of a view show it. */
import { exactBounds } from "../../../geometry/bounds.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { add, compare, type Length, multiply, rational, TOLERANCE, toNumber, ZERO } from "../../../units/index.ts";
import type { Body } from "./bodies.ts";

export interface Sides {
  readonly low: Length;
  readonly high: Length;
}

/** Of a part that is turned, as it stands in the room. */
const boxOf = ({ body, solid, turned }: BuiltPart) => (turned ? exactBounds(solid) : body);

export function outsideOf(parts: readonly BuiltPart[], axis: 0 | 1 | 2): Sides {
  const sorted = (side: "low" | "high") => parts.map((part) => boxOf(part)[side][axis]).sort(compare);
  const [lows, highs] = [sorted("low"), sorted("high")];
  return { low: lows[0] ?? ZERO, high: highs.at(-1) ?? ZERO };
}

type Feature = BuiltPart["features"][number];

/** From where to where a cut goes along an axis; null where its sides are not square to the axes, or it has none. */
function cutAlong(feature: Feature, axis: 0 | 1 | 2): Sides | null {
  if (!("size" in feature)) return null;
  const { origin, along, across, into, size } = feature;
  if (![along, across, into].every((way) => Number.isInteger(way[axis]))) return null;
  const reach = [along, across, into].map((way, i) => multiply(rational(way[axis]), size[i as 0 | 1 | 2]));
  const [from, to] = [origin[axis], reach.reduce(add, origin[axis])];
  return compare(from, to) < 0 ? { low: from, high: to } : { low: to, high: from };
}

/** The faces that a part's notches give it, across an axis. */
export const notchedAt = ({ features }: BuiltPart, axis: 0 | 1 | 2): readonly Length[] =>
  features.flatMap((feature) => {
    const cut = feature.kind === "notch" ? cutAlong(feature, axis) : null;
    return cut ? [cut.low, cut.high] : [];
  });

/** A line square to an axis: where along it, and from where to where across. */
export interface SquareLine {
  readonly id: string;
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Whether a line stands in the field of what does not end there: what shows through the pane of a door belongs to what is behind it,
 * and what shows in the cuts of a joint, like the fingers of the other part, to the joint. `axes`: across the line, and along it.
 */
export function fieldsOf(
  bodies: readonly Body[],
  axes: readonly [0 | 1 | 2, 0 | 1 | 2],
): (line: SquareLine) => boolean {
  const [axis, along] = axes;
  const depth = (3 - axis - along) as 0 | 1 | 2;
  // The front is seen from its low side, the right side and the top from their high ones.
  const nearness = (parts: readonly BuiltPart[]): number => {
    const { low, high } = outsideOf(parts, depth);
    return depth === 1 ? -toNumber(low) : toNumber(high);
  };
  const nearOf = new Map(bodies.flatMap(({ parts }) => parts.map((part) => [part.id, nearness([part])] as const)));
  const doors = bodies
    .filter(({ moves }) => moves)
    .map(({ parts }) => ({ across: outsideOf(parts, axis), long: outsideOf(parts, along) }));
  const still = bodies.flatMap(({ parts, moves }) => (moves ? [] : parts.filter(({ turned }) => !turned)));
  const cuts = still.flatMap((part) => {
    const [whole, near] = [outsideOf([part], axis), nearness([part])];
    return part.features.flatMap((feature) => {
      const [across, long] = [cutAlong(feature, axis), cutAlong(feature, along)];
      return feature.for !== null && across && long ? [{ whole, near, across, long }] : [];
    });
  });
  return ({ id, at, low, high }) =>
    doors.some(({ across, long }) => within(across, at, -TOLERANCE) && spans(long, low, high)) ||
    cuts.some(
      ({ whole, near, across, long }) =>
        within(whole, at, -TOLERANCE) &&
        within(across, at, TOLERANCE) &&
        spans(long, low, high) &&
        near >= (nearOf.get(id) ?? Number.POSITIVE_INFINITY) - TOLERANCE,
    );
}

const within = ({ low, high }: Sides, at: number, by: number): boolean =>
  toNumber(low) - by < at && at < toNumber(high) + by;
const spans = ({ low, high }: Sides, from: number, to: number): boolean =>
  toNumber(low) <= from + TOLERANCE && to <= toNumber(high) + TOLERANCE;
