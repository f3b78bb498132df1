/** How far what is laid on a body reaches past that, from what a rule can be laid against there. */
import { isSame, type Length, TOLERANCE } from "../../../../units/length.ts";
import { max, min, rational, subtract, toNumber } from "../../../../units/rational.ts";
import { type AxisIndex, INDICES } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

export interface Overhang {
  /** As far on both sides. */
  readonly past: Length;
  /** From where to where all that arrives reaches. */
  readonly over: { readonly low: Length; readonly high: Length };
  /** What it reaches past. */
  readonly outer: readonly string[];
}

/** Of all that arrives past all that is there, where those meet; null where it is not as far on both sides, or does not reach past. */
export function overhang(
  work: Work,
  joint: Joint,
  axis: AxisIndex,
  there: readonly string[],
  arriving: readonly string[],
): Overhang | null {
  const [first] = joint.contact;
  const normal = first && INDICES.find((i) => Math.abs(first.normal[i]) > 0.99);
  const level = normal === undefined ? undefined : first?.polygons[0]?.[0]?.[normal];
  if (normal === undefined || level === undefined) return null;
  const reaches = (ids: readonly string[]) =>
    ids.flatMap((id) => {
      const reach = reachAt(work.part(id), normal, level, axis);
      return reach ? [{ id, ...reach }] : [];
    });
  const [under, over] = [reaches(there), reaches(arriving)];
  if (under.length === 0 || over.length === 0) return null;
  const low = under.map((each) => each.low).reduce(min);
  const high = under.map((each) => each.high).reduce(max);
  const all = { low: over.map((each) => each.low).reduce(min), high: over.map((each) => each.high).reduce(max) };
  const past = subtract(low, all.low);
  if (past.n <= 0n || !isSame(past, subtract(all.high, high))) return null;
  return {
    past,
    over: all,
    outer: under.filter((each) => isSame(each.low, low) || isSame(each.high, high)).map(({ id }) => id),
  };
}

/** From where to where a part reaches along an axis in the plane in which others meet; null where it does not come up to that. */
function reachAt({ body, turned, solid }: Part, normal: AxisIndex, level: number, axis: AxisIndex) {
  const off = (value: number): number => value - level;
  const [low, high] = [body.low, body.high].map((corner) => off(toNumber(corner[normal]))) as [number, number];
  if (!turned) return low <= TOLERANCE && high >= -TOLERANCE ? { low: body.low[axis], high: body.high[axis] } : null;
  const at = solid.pieces
    .flatMap(({ vertices }) => vertices.map(({ x, y, z }) => [x, y, z] as const))
    .filter((vertex) => Math.abs(off(vertex[normal])) <= TOLERANCE)
    .map((vertex) => rational(Math.round(vertex[axis])));
  return at.length === 0 ? null : { low: at.reduce(min), high: at.reduce(max) };
}
