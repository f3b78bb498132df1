import { inches, type Length, millimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { less, rational, subtract, toNumber } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { enclosing, INDICES } from "../../design/space.ts";
import type { Work } from "./draft.ts";

/**
 * The diagonals of a body that is a flat closed frame, to prove it square: four joints or more, wood at each of its four corners.
 * Permitted difference 1/16 in under 36 in, 1/8 in above (common practice, no source). Null for any other body.
 */
export function squareOf(work: Work, parts: readonly string[]): { value: Length; within: Length } | null {
  const inside = new Set(parts);
  const joints = work.design.joints.filter((joint) => joint.parts.every((id) => inside.has(id)));
  const boxes = parts.map((id) => work.part(id).body);
  const [first, ...rest] = boxes;
  if (parts.some((id) => work.part(id).turned)) return null;
  if (!first || joints.length < 4 || boxes.length < 4) return null;
  const bounds = rest.reduce(enclosing, first);
  const size = (axis: 0 | 1 | 2): number => toNumber(subtract(bounds.high[axis], bounds.low[axis]));
  const [thin, a, b] = INDICES.toSorted((i, j) => size(i) - size(j)) as [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2];
  if (size(thin) * 3 > size(a)) return null;
  const corner = (box: (typeof boxes)[number], highA: boolean, highB: boolean): boolean =>
    same(box[highA ? "high" : "low"][a], bounds[highA ? "high" : "low"][a]) &&
    same(box[highB ? "high" : "low"][b], bounds[highB ? "high" : "low"][b]);
  const corners = [false, true].flatMap((highA) =>
    [false, true].map((highB) => boxes.some((box) => corner(box, highA, highB))),
  );
  if (corners.includes(false)) return null;
  const inch = work.design.units === "inch";
  const exact = Math.sqrt(size(a) * size(a) + size(b) * size(b));
  const value = roundTo(rational(Math.round(exact)), work.design.precision);
  const near = inch ? inches(1, 16) : millimetres(3, 2);
  return { value, within: less(value, inches(36)) ? near : inch ? inches(1, 8) : millimetres(3) };
}

const same = (x: Length, y: Length): boolean => Math.abs(toNumber(subtract(x, y))) < UNITS_PER_MM / 100;
