/** A frame whose posts splay does not lie flat when what is put on it has to stand plumb: one end of them lies higher. */
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, axisOf, extent, faceOf, otherAxes } from "../../design/space.ts";
import type { Direction, Face, Part } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import type { Work } from "./draft.ts";

/** Which ends of which parts lie higher than their others, and by how much. */
export interface Raised {
  readonly ids: readonly string[];
  readonly end: Face;
  readonly by: Length;
}

/** Less is within what battens give. */
const LEVEL = 2 * UNITS_PER_MM;

/** Null where all lies level, or ends lie higher by more than one measure. */
export function raisedEnds(work: Work, ids: readonly string[], up: Direction): Raised | null {
  const own = ids.map(work.part).flatMap((part) => {
    const end = part.turned ? raisedEnd(part, up) : null;
    return end ? [{ id: part.id, ...end }] : [];
  });
  const [first] = own;
  if (!first || own.some(({ end, by }) => end !== first.end || Math.abs(by - first.by) > LEVEL / 2)) return null;
  return { ids: own.map(({ id }) => id), end: first.end, by: rational(Math.round(first.by)) };
}

function raisedEnd(part: Part, up: Direction): { readonly end: Face; readonly by: number } | null {
  const axis = axisOf(up);
  const box = boxOf(part);
  const size = (i: AxisIndex): number => toNumber(extent(box, i));
  const [a, b] = otherAxes(axis);
  const long = size(a) > size(b) ? a : b;
  const middle = (toNumber(box.low[long]) + toNumber(box.high[long])) / 2;
  const points = part.solid.pieces.flatMap(({ vertices }) => vertices.map(({ x, y, z }) => [x, y, z] as const));
  const lowest = (isHigh: boolean): number =>
    points.reduce(
      (so, at) => (at[long] > middle === isHigh ? Math.min(so, at[axis] * up[axis]) : so),
      Number.POSITIVE_INFINITY,
    );
  const by = lowest(true) - lowest(false);
  return Math.abs(by) < LEVEL ? null : { end: faceOf(long, by > 0), by: Math.abs(by) };
}
