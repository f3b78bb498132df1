/** How a hinge lies between what hangs and what it hangs on. Everything else about hinges is told in these directions. */
import type { Face, JointDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, compare, half, max, min, negate, subtract } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { acrossGap } from "../joinery/touch.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, axisAt, extent, faceAxis, isHigh, otherAxes, thirdAxis, triple } from "../space.ts";

export interface Way {
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
}

/** A part, as a hinge sees it. */
export interface Hung {
  readonly id: string;
  readonly body: Box;
  readonly frame: Frame;
}

export interface Lie {
  /** The part that the hinge is screwed to, as thick as the whole leaf. */
  readonly door: Box;
  readonly hold: Box;
  /** From what it hangs on to the door, across the gap. */
  readonly apart: Way;
  readonly gap: Length;
  /** The way that the door opens. */
  readonly opens: Way;
  /** The way that a barrel stands out: to the front of an inset door, to the side of one that lies in front. */
  readonly out: Way;
  /** Along the pin. */
  readonly along: AxisIndex;
  /** From the middle of the door to its hinged edge. */
  readonly edge: Way;
  readonly inset: boolean;
}

type Reaches = (id: string, axis: AxisIndex, sign: 1 | -1) => Length | null;

/**
 * Null where the two do not face each other. `reaches` tells where the door with all that is on it ends: strips on a slab are as much of the leaf as
 * the slab is.
 */
export function lieOf(draft: JointDraft, { id, body, frame }: Hung, hold: Hung, reaches: Reaches): Lie | null {
  const touch = acrossGap(body, hold.body);
  if (touch.kind !== "faces") return null;
  const apart: Way = { axis: touch.axis, sign: touch.sign > 0 ? -1 : 1 };
  const face = draft.opens?.value ?? usualOpening(frame, apart);
  const opens: Way = { axis: faceAxis(face), sign: isHigh(face) ? 1 : -1 };
  const inset = opens.axis !== apart.axis;
  const edge = inset ? turned(apart) : sideways(apart.axis, id, body, hold.body, reaches);
  const out = inset ? opens : edge;
  const along = thirdAxis(apart.axis, out.axis);
  const front = reaches(id, opens.axis, opens.sign) ?? endOf(body, opens);
  const ends: readonly Length[] = [body.low[opens.axis], body.high[opens.axis], front];
  const door: Box = {
    low: triple((i) => (i === opens.axis ? ends.reduce(min) : body.low[i])),
    high: triple((i) => (i === opens.axis ? ends.reduce(max) : body.high[i])),
  };
  return { door, hold: hold.body, apart, gap: touch.gap, opens, out, along, edge, inset };
}

/** To the front; what lies flat to the top; what stands sideways away from what it lies on, or to the right. */
function usualOpening(frame: Frame, apart: Way): Face {
  const axis = axisAt(frame.thickness);
  if (axis === "deep") return "front";
  if (axis === "up") return "top";
  return apart.axis === frame.thickness && apart.sign < 0 ? "left" : "right";
}

/** The narrow direction of what a door lies in front of, away from the door. */
function sideways(axis: AxisIndex, id: string, door: Box, hold: Box, reaches: Reaches): Way {
  const [a, b] = otherAxes(axis);
  const narrow = compare(extent(hold, a), extent(hold, b)) <= 0 ? a : b;
  // A strip as wide as what it hangs on: the rest of the door, away from which it is hinged, is on one side of it.
  const [low, high] = [reaches(id, narrow, -1) ?? door.low[narrow], reaches(id, narrow, 1) ?? door.high[narrow]];
  return { axis: narrow, sign: compare(add(hold.low[narrow], hold.high[narrow]), add(low, high)) <= 0 ? -1 : 1 };
}

export const turned = ({ axis, sign }: Way): Way => ({ axis, sign: sign > 0 ? -1 : 1 });
/** Moved along a way; backwards where `by` is below zero. */
export const onward = (from: Length, { sign }: Way, by: Length): Length => add(from, sign > 0 ? by : negate(by));
/** Where a body ends, that way. */
export const endOf = (body: Box, { axis, sign }: Way): Length => (sign > 0 ? body.high : body.low)[axis];

/** The middle of the gap. */
export const gapMiddle = ({ hold, apart, gap }: Lie): Length => onward(endOf(hold, apart), apart, half(gap));

/** The plane that the barrel stands out from. */
export function barrelPlane({ door, hold, out, inset }: Lie): Length {
  const own = endOf(door, out);
  if (!inset) return own;
  return (out.sign > 0 ? max : min)(own, endOf(hold, out));
}

/** A box by its two ends in each direction, in any order. */
export function boxOf(ends: ReadonlyMap<AxisIndex, readonly [Length, Length]>): Box {
  const pair = (i: AxisIndex): readonly [Length, Length] => {
    const found = ends.get(i);
    if (!found) throw new Error(`a box without its direction ${i}`);
    return found;
  };
  return { low: triple((i) => min(...pair(i))), high: triple((i) => max(...pair(i))) };
}

/** How wide the door is, from its hinged edge to the other. */
export const widthOf = ({ door, edge }: Lie): Length => extent(door, edge.axis);
export const thicknessOf = ({ door, opens }: Lie): Length => extent(door, opens.axis);
/** How far the door reaches over what it lies in front of, measured from the inner edge of that. */
export const overlayOf = ({ door, hold, edge }: Lie): Length => {
  const by = subtract(endOf(door, edge), endOf(hold, turned(edge)));
  return edge.sign > 0 ? by : negate(by);
};
