import { bounds, isBox, type Model, near } from "./model.ts";
import type { BoxFeature, Part } from "./record.ts";
import { printedOf } from "./shown.ts";
import { plus, times, type V3 } from "./vector.ts";

/** A plane square to a direction of the room that a part's printed sizes lead to. */
export interface Station {
  /** Where the solids have it. */
  readonly at: number;
  /** How far it is from the part's low end, by what is printed. */
  readonly printed: number;
  /** The corners of the cut that it bounds; absent: it bounds the part. */
  readonly within?: readonly [V3, V3];
}

/** Whether a station is that of a point on the part's skin. */
export const isThrough = ({ at, within }: Station, point: V3, axis: 0 | 1 | 2): boolean =>
  near(at, point[axis]) &&
  (within === undefined ||
    point.every((n, i) => n > Math.min(...both(within, i)) - 0.01 && n < Math.max(...both(within, i)) + 0.01));

const both = ([a, b]: readonly [V3, V3], i: number): [number, number] => [a[i as 0], b[i as 0]];

/** Where a part begins and ends in a direction, its shoulders, and the floors and sides of its cuts; empty for a part that lies askew. */
export function stationsOf(model: Model, part: Part, axis: 0 | 1 | 2): readonly Station[] {
  const printed = printedOf(model.record, part);
  const { thickness, width, length } = part.axes;
  const along = [thickness, width, length].findIndex((direction) => near(Math.abs(direction[axis]), 1, 1e-6));
  const size = printed?.[along];
  if (size === undefined) return [];
  const [low, high] = bounds(model.solid(part.id)).map((corner) => corner[axis]) as [number, number];
  const cuts = part.features.filter((feature) => isBox(feature) && square(feature)) as BoxFeature[];
  // A mitre takes the corner off a tenon, which is printed at its full length.
  const tips = cuts
    .filter(({ kind }) => OUT.has(kind))
    .map(({ origin, into, size }) => origin[axis] + into[axis] * size[2]);
  const ends = {
    low: { at: Math.min(low, ...tips), printed: 0 },
    high: { at: Math.max(high, ...tips), printed: size },
  };
  return [ends.low, ends.high, ...cuts.flatMap((cut) => cutStations(cut, axis, ends))];
}

const square = ({ along, across, into, lean, radius }: BoxFeature): boolean =>
  !lean && radius === undefined && [along, across, into].every((v) => v.some((n) => near(Math.abs(n), 1, 1e-6)));

/** What stands out of a part, and is measured back from its end. */
const OUT: ReadonlySet<string> = new Set(["tenon", "tongue", "haunch"]);

function cutStations(
  { kind, origin, along, across, into, size }: BoxFeature,
  axis: 0 | 1 | 2,
  { low, high }: { readonly low: Station; readonly high: Station },
): readonly Station[] {
  const far = [along, across, into].reduce<V3>((corner, way, i) => plus(corner, times(way, size[i as 0])), origin);
  const within = [origin, far] as const;
  const run = (direction: V3, long: number): readonly Station[] => {
    const way = direction[axis];
    if (!near(Math.abs(way), 1, 1e-6)) return [];
    const from = { at: origin[axis], printed: origin[axis] - low.at, within };
    return [from, { at: from.at + way * long, printed: from.printed + way * long, within }];
  };
  const way = into[axis];
  if (!near(Math.abs(way), 1, 1e-6)) return [...run(along, size[0]), ...run(across, size[1])];
  const [start, inner] = OUT.has(kind)
    ? [origin[axis] + way * size[2], origin[axis]]
    : [origin[axis], origin[axis] + way * size[2]];
  const end = [low, high].find((each) => near(each.at, start));
  if (end === undefined) return [];
  return [{ at: inner, printed: end.printed + (end === low ? size[2] : -size[2]), ...(!OUT.has(kind) && { within }) }];
}
