import type { Contact } from "../../../geometry/index.ts";
import { TOLERANCE } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import { triple } from "../space.ts";
import type { Row } from "./row.ts";

type Stretch = readonly [number, number];

/**
 * A row whose points keep `margin` from where the contact is interrupted, as a side is by the dadoes of its shelves: a point too near
 * goes to the nearest place that is wide enough. Points of a contact without such a place stay.
 */
export function onWood(row: Row, polygons: Contact["polygons"], margin: number): Row {
  const { along, across, points } = row;
  const line = toNumber(points[0]?.[across] ?? rational(0));
  const stretches = united(
    polygons.map((polygon) => stretchOn(polygon, along, across, line)).filter((stretch) => stretch !== null),
  );
  if (stretches.length <= 1) return row;
  const room = stretches.flatMap(([from, to]): Stretch[] =>
    to - from > 2 * margin ? [[from + margin, to - margin]] : [],
  );
  const moved = points.map((point) => {
    const at = toNumber(point[along]);
    if (room.length === 0 || room.some(([from, to]) => at >= from && at <= to)) return point;
    const nearest = room
      .map(([from, to]) => Math.min(Math.max(at, from), to))
      .reduce((best, each) => (Math.abs(each - at) < Math.abs(best - at) ? each : best));
    return triple((axis) => (axis === along ? rational(Math.round(nearest)) : point[axis]));
  });
  return { ...row, points: moved };
}

/** Where a line across a polygon lies inside it. */
function stretchOn(polygon: Contact["polygons"][number], along: number, across: number, line: number): Stretch | null {
  const met = polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const [from, to] = [a[across] ?? 0, b[across] ?? 0];
    if (Math.min(from, to) > line + TOLERANCE || Math.max(from, to) < line - TOLERANCE) return [];
    if (Math.abs(to - from) <= TOLERANCE) return [a[along] ?? 0, b[along] ?? 0];
    const share = Math.min(Math.max((line - from) / (to - from), 0), 1);
    return [(a[along] ?? 0) + share * ((b[along] ?? 0) - (a[along] ?? 0))];
  });
  return met.length < 2 ? null : [Math.min(...met), Math.max(...met)];
}

/** Stretches that touch are one. */
function united(stretches: readonly Stretch[]): readonly Stretch[] {
  const all: [number, number][] = [];
  for (const [from, to] of stretches.toSorted((a, b) => a[0] - b[0])) {
    const last = all.at(-1);
    if (last && from <= last[1] + TOLERANCE) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
}
