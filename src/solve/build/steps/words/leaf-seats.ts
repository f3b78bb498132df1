/** Leaves of hinges that stand out of what they are let into, because the door hangs farther in or out than what carries it. */
import { type Length, TOLERANCE } from "../../../../units/length.ts";
import { add, equal, half, less, negate, subtract, toNumber } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import { acrossGap } from "../../../design/joinery/touch.ts";
import { featureBox } from "../../../design/shapes/feature-box.ts";
import { type AxisIndex, faceOf, INDICES, indexOf, middle } from "../../../design/space.ts";
import type { Box, Joint, Part } from "../../../design.ts";
import { hingedIn } from "../../order/links.ts";
import { called, type Work } from "../draft.ts";
import type { BoxFeature } from "./boxes.ts";
import { sideWord } from "./measured.ts";

/** How the seats of leaves are marked: round the leaf where it lies in the wood as wide as it is, else by how far it stands out. */
export function seatTexts(work: Work, part: Part, seat: BoxFeature): readonly string[] {
  const leaf = work.plan.hardware.find(({ joint, carriedBy }) => joint === seat.for && carriedBy === part.id);
  const axis = INDICES.find((i) => seat.across[i] !== 0);
  const out =
    leaf && axis !== undefined ? pastFace(part, leaf.at[axis], half(measureOf(leaf.item, "barrel")), axis) : null;
  if (!leaf || axis === undefined || !out || out.by.n <= 0n)
    return [
      "Mark each round the leaf that goes into it, and cut to these marks: the leaf in your hand counts, not the figures.",
    ];
  const why = leaf.halfOf === undefined ? "what hangs on it stands out so far" : "it hangs so far back";
  return [
    `Each leaf stands out ${work.print(out.by)} past the ${faceOf(axis, out.high)} ${sideWord(part, axis)} here, the knuckle outside: ${why}. Lay it on so, mark its two ends and the long side that lies on the wood, and cut to these marks.`,
  ];
}

/** How far the plane that a barrel stands out from lies outside of a part. */
function pastFace(
  part: Part,
  pin: Length,
  radius: Length,
  axis: AxisIndex,
): { readonly by: Length; readonly high: boolean } {
  const high = less(middle(part.body, axis), pin);
  const plane = high ? subtract(pin, radius) : add(pin, radius);
  return { high, by: high ? subtract(plane, part.body.high[axis]) : subtract(part.body.low[axis], plane) };
}

/** An edge that is rounded or chamfered, by the two faces that meet there. */
export type Arris = readonly (readonly [axis: AxisIndex, high: boolean])[];

/** Where leaves are let in at an edge its rounding stops before them: they lie on the whole of their wood, and their knuckles stand along it. */
export function squareAtSeats(work: Work, part: Part, edges: readonly Arris[]): readonly string[] {
  const hinged = hingedIn(work.design);
  const seats = part.features.flatMap((each) =>
    "size" in each && each.for !== null && hinged.has(each.for) ? [featureBox(each)] : [],
  );
  const at = ({ low, high }: Box, [axis, isHigh]: Arris[number]): boolean =>
    isHigh ? equal(high[axis], part.blank.high[axis]) : equal(low[axis], part.blank.low[axis]);
  if (!edges.some((edge) => seats.some((seat) => edge.every((face) => at(seat, face))))) return [];
  return [
    "Leave the edge square along each seat for a hinge leaf: lay the leaf in, mark its two ends on the edge, and stop before the one and begin again behind the other.",
  ];
}

/** ", the front of the door stile (D) set back 3/8 in from that of the left side (A)": where a door between what carries it shuts; else nothing. */
export function setBackText(work: Work, { id, parts: [hung, hold] }: Joint): string {
  const [door, frame] = [work.part(hung), work.part(hold)];
  const pin = work.plan.hardware.find(({ joint }) => joint === id)?.at;
  const touch = acrossGap(door.body, frame.body);
  const axis = indexOf(door.axes.thickness);
  if (!pin || door.turned || frame.turned || touch.kind !== "faces" || touch.axis === axis) return "";
  const high = less(middle(door.body, axis), pin[axis]);
  const by = high
    ? subtract(frame.body.high[axis], door.body.high[axis])
    : subtract(door.body.low[axis], frame.body.low[axis]);
  const own = `, the ${faceOf(axis, high)} of the ${called(work, hung)}`;
  const that = `that of the ${called(work, hold)}`;
  if (Math.abs(toNumber(by)) <= TOLERANCE) return `${own} flush with ${that}`;
  return by.n > 0n
    ? `${own} set back ${work.print(by)} from ${that}`
    : `${own} standing out ${work.print(negate(by))} past ${that}`;
}
