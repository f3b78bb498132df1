import { inches, type Length, millimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { less, rational, subtract, toNumber } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, enclosing, faceOf, INDICES } from "../../design/space.ts";
import type { Face, Joint, Part } from "../../design.ts";
import type { Work } from "./draft.ts";

/** What the diagonals of a body measure, and how far they may differ; on which of its sides they are measured, null where it is flat. */
export interface Square {
  readonly value: Length;
  readonly within: Length;
  readonly on: Face | null;
}

/** Flat: the others are three times as large. */
const FLAT = 3;

/** So much of a frame's width and height. */
const FILLS = 0.85;

/**
 * The diagonals of a closed frame, to prove it square: joints near each of its four corners, and wood at them on one side. Of a case they are
 * measured across its front, of a box or a table across its top: where its least size lies behind. Permitted difference 1/16 in under 36 in,
 * 1/8 in above (common practice, no source). Null for any other body.
 */
export function squareOf(work: Work, ids: readonly string[]): Square | null {
  const inside = new Set(ids);
  const joints = work.design.joints.filter((joint) => joint.parts.every((id) => inside.has(id)));
  const parts = ids.map(work.part);
  const [first, ...rest] = parts.map(({ body }) => body);
  if (!first || joints.length < 4 || parts.length < 4 || parts.some(({ turned }) => turned)) return null;
  const bounds = rest.reduce(enclosing, first);
  const size = (axis: AxisIndex): number => toNumber(subtract(bounds.high[axis], bounds.low[axis]));
  const axes = INDICES.toSorted((i, j) => size(i) - size(j));
  for (const thin of axes) {
    const on = closedOn(thin, bounds, parts, joints);
    const [a, b] = axes.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
    if (on)
      return measured(work, Math.sqrt(size(a) * size(a) + size(b) * size(b)), size(thin) * FLAT > size(a) ? on : null);
  }
  return null;
}

function measured({ design }: Work, exact: number, on: Face | null): Square {
  const inch = design.units === "inch";
  const value = roundTo(rational(Math.round(exact)), design.precision);
  const near = inch ? inches(1, 16) : millimetres(3, 2);
  return { value, on, within: less(value, inches(36)) ? near : inch ? inches(1, 8) : millimetres(3) };
}

/** The side along an axis on which there is wood at each corner, where joints near every corner hold the frame together; null where there is none. */
function closedOn(
  thin: AxisIndex,
  bounds: Part["body"],
  parts: readonly Part[],
  joints: readonly Joint[],
): Face | null {
  const [a, b] = INDICES.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
  const quarters = [false, true].flatMap((highA) => [false, true].map((highB) => [highA, highB] as const));
  const middle = (axis: AxisIndex): number => (toNumber(bounds.low[axis]) + toNumber(bounds.high[axis])) / 2;
  const held = quarters.every(([highA, highB]) =>
    joints.some(({ contact }) =>
      contact.some(
        ({ normal, centre }) =>
          Math.abs(normal[thin]) < 0.5 && centre[a] > middle(a) === highA && centre[b] > middle(b) === highB,
      ),
    ),
  );
  if (!held) return null;
  const reaches = ({ body }: Part, axis: AxisIndex, high: boolean): boolean =>
    same(body[high ? "high" : "low"][axis], bounds[high ? "high" : "low"][axis]);
  // A panel or slab that fills it keeps it square by itself, but for one that is loose in grooves.
  const size = ({ low, high }: Part["body"], axis: AxisIndex): number => toNumber(subtract(high[axis], low[axis]));
  const fills = ({ id, body }: Part): boolean =>
    [a, b].every((axis) => size(body, axis) > FILLS * size(bounds, axis)) &&
    joints.some(
      ({ parts: [joined, mate], method, glue }) => (joined === id || mate === id) && (method !== "groove" || glue),
    );
  if (parts.some(fills)) return null;
  // A front is looked at before a back, a top before an underside.
  const far = [thin !== 1, thin === 1].find((high) =>
    quarters.every(([highA, highB]) =>
      parts.some((part) => reaches(part, thin, high) && reaches(part, a, highA) && reaches(part, b, highB)),
    ),
  );
  return far === undefined ? null : faceOf(thin, far);
}

const same = (x: Length, y: Length): boolean => Math.abs(toNumber(subtract(x, y))) < UNITS_PER_MM / 100;
