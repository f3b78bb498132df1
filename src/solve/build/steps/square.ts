import { inches, type Length, millimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { less, rational, subtract, toNumber } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, enclosing, faceOf, INDICES } from "../../design/space.ts";
import type { Direction, Face, Joint, Part } from "../../design.ts";
import type { Arms } from "./arms.ts";
import type { Backed } from "./back-boards.ts";
import { caseSidesOf } from "./case-sides.ts";
import { type Corners, cornersOf } from "./corners.ts";
import type { Work } from "./draft.ts";
import { insideCorners } from "./inside-corners.ts";

/** What the diagonals of a body measure, and how far they may differ; on which of its sides they are measured, null where it is flat. */
export interface Square {
  readonly value: Length;
  readonly within: Length;
  readonly on: Face | null;
  /** How it lies. */
  readonly up: Direction;
  /** Ids of the parts that have the corners, where others reach past those. */
  readonly of: readonly string[];
  /** They are measured between the corners of shoulders, past which tenons stand. */
  readonly shoulders: boolean;
  /** They are those of the room between the parts. */
  readonly inside: boolean;
}

/** Flat: the others are three times as large. */
const FLAT = 3;

/** So much of a frame's width and height. */
const FILLS = 0.85;

/** A frame that is closed: the direction in which it is thin, or that it is measured across, and whether it is flat. */
interface Closed {
  readonly thin: AxisIndex;
  readonly flat: boolean;
  readonly parts: readonly Part[];
}

/** How a frame is looked at: how it lies; the side on the bench too, for what is lifted; along which axes; on its high or low side only. */
interface Look {
  readonly up: Direction;
  readonly anyway?: boolean;
  readonly along?: readonly AxisIndex[];
  readonly far?: boolean;
}

/**
 * The diagonals of a closed frame, to prove it square: joints near each of its four corners. Of a case they are measured across its front, of a
 * box or a table across its top: where its least size lies behind; of what lies on one of the two, across the other; on the other side where there
 * is no wood at each corner. Permitted difference 1/16 in under 36 in, 1/8 in above (common practice, no source). Null for any other body, and
 * where no corners can be reached; those of the side that lies on the bench only `anyway`: what is lifted to get at them. A frame without corners
 * outside is measured inside.
 */
export function squareOf(
  work: Work,
  ids: readonly string[],
  { up, anyway = false, along = INDICES, far }: Look,
): Square | null {
  const closed = closedOf(work, ids, along);
  const look = { up, of: [], anyway, ...(far !== undefined && { far }) };
  const outside = closed.flatMap((each) => proofOf(work, each, look) ?? []);
  return outside[0] ?? closed.flatMap((each) => insideOf(work, each, up) ?? [])[0] ?? null;
}

/** Of a flat frame: a case is deep inside. */
function insideOf(work: Work, { thin, flat, parts }: Closed, up: Direction): Square | null {
  const corners = flat ? insideCorners(parts, thin) : null;
  return (
    corners && {
      ...measured(work, { diagonal: corners.diagonal, shoulders: false }),
      ...{ inside: true, on: null, up, of: corners.of },
    }
  );
}

/** The same of the two sides of a case, past which other parts reach. */
export function squareOfSides(work: Work, ids: readonly string[], up: Direction): Square | null {
  const own = caseSidesOf(work, ids);
  const of = own?.sides.map(({ id }) => id) ?? [];
  return own && proofOf(work, { thin: own.thin, flat: false, parts: own.sides }, { up, of, anyway: false });
}

/** The same of two arms that are held at one end only: they have the corners. */
export function squareOfArms(work: Work, { arms, thin, flat }: Arms, up: Direction): Square | null {
  const of = arms.map(({ id }) => id);
  return proofOf(work, { thin, flat, parts: arms }, { up, of, anyway: flat });
}

/** The same of the uprights that boards close, side by side, on the side where those go. */
export function squareOfUprights(work: Work, { uprights, thin, high }: Backed, up: Direction): Square | null {
  const corners = cornersOf(uprights, thin, high);
  const of = uprights.map(({ id }) => id);
  return corners && { ...measured(work, corners), on: faceOf(thin, high), up, of };
}

interface Proving extends Pick<Square, "up" | "of"> {
  readonly anyway: boolean;
  readonly far?: boolean;
}

function proofOf(work: Work, { thin, flat, parts }: Closed, { up, of, anyway, far: only }: Proving): Square | null {
  // A front is looked at before a back, a top before an underside; nobody measures under what lies on the bench.
  const best = up[thin] === 0 ? thin !== 1 : up[thin] > 0;
  const either = up[thin] === 0 || flat || anyway ? [best, !best] : [best];
  for (const far of only === undefined ? either : [only]) {
    const corners = cornersOf(parts, thin, far);
    if (corners) return { ...measured(work, corners), on: flat ? null : faceOf(thin, far), up, of };
  }
  return null;
}

/** Whether some parts are a frame that is closed; `thin`: seen along that axis. */
export const isClosed = (work: Work, ids: readonly string[], thin?: AxisIndex): boolean =>
  closedOf(work, ids, thin === undefined ? INDICES : [thin]).length > 0;

/** Along which axes a frame is closed that some parts are, by its sizes. */
export const closedAlong = (work: Work, ids: readonly string[]): readonly AxisIndex[] =>
  closedOf(work, ids, INDICES).map(({ thin }) => thin);

function closedOf(work: Work, ids: readonly string[], along: readonly AxisIndex[]): readonly Closed[] {
  const inside = new Set(ids);
  const joints = work.design.joints.filter((joint) => joint.parts.every((id) => inside.has(id)));
  const parts = ids.map(work.part);
  const [first, ...rest] = parts.map(({ body }) => body);
  if (!first || joints.length < 4 || parts.length < 4 || parts.some(({ turned }) => turned)) return [];
  const bounds = rest.reduce(enclosing, first);
  const size = (axis: AxisIndex): number => toNumber(subtract(bounds.high[axis], bounds.low[axis]));
  const axes = INDICES.toSorted((i, j) => size(i) - size(j));
  const seen = axes.filter((axis) => along.includes(axis) && closedOn(axis, bounds, parts, joints));
  const closed = seen.map((thin): Closed => {
    const [a] = axes.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
    return { thin, parts, flat: size(thin) * FLAT <= size(a) };
  });
  // What is flat is looked at on its face only.
  return closed[0]?.flat ? closed.slice(0, 1) : closed;
}

function measured(
  { design }: Work,
  { diagonal, shoulders }: Corners,
): Pick<Square, "value" | "within" | "shoulders" | "inside"> {
  const inch = design.units === "inch";
  const value = roundTo(rational(Math.round(diagonal)), design.precision);
  const near = inch ? inches(1, 16) : millimetres(3, 2);
  return {
    value,
    shoulders,
    inside: false,
    within: less(value, inches(36)) ? near : inch ? inches(1, 8) : millimetres(3),
  };
}

/** Whether joints near every corner hold a frame together that is thin along an axis, and there is wood at each corner on one side. */
function closedOn(thin: AxisIndex, bounds: Part["body"], parts: readonly Part[], joints: readonly Joint[]): boolean {
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
  if (!held) return false;
  const reaches = ({ body }: Part, axis: AxisIndex, high: boolean): boolean =>
    same(body[high ? "high" : "low"][axis], bounds[high ? "high" : "low"][axis]);
  // A panel or slab that fills it keeps it square by itself, but for one that is loose in grooves.
  const size = ({ low, high }: Part["body"], axis: AxisIndex): number => toNumber(subtract(high[axis], low[axis]));
  const fills = ({ id, body }: Part): boolean =>
    [a, b].every((axis) => size(body, axis) > FILLS * size(bounds, axis)) &&
    joints.some(
      ({ parts: [joined, mate], method, glue }) => (joined === id || mate === id) && (method !== "groove" || glue),
    );
  if (parts.some(fills)) return false;
  return [false, true].some((high) =>
    quarters.every(([highA, highB]) =>
      parts.some((part) => reaches(part, thin, high) && reaches(part, a, highA) && reaches(part, b, highB)),
    ),
  );
}

const same = (x: Length, y: Length): boolean => Math.abs(toNumber(subtract(x, y))) < UNITS_PER_MM / 100;
