/** Where parts are fixed to each other, seen along one direction. Millimetres. */
import { UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import { NAILS } from "../../../design/fastening/catalogue.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Fastener, FastenerKind, Hole, Joint } from "../../../design.ts";

/** A joint that holds two parts from `low` to `high`. */
export interface Anchor {
  readonly joint: Joint;
  readonly low: number;
  readonly high: number;
  /** How far each of its fasteners may shift in its hole, either way; 0 where it holds fast. */
  readonly slack: number;
  /** Null where glue holds it. */
  readonly fastener: { readonly kind: FastenerKind; readonly rod: number } | null;
}

/** Nails, brads and staples bend, and are taken to let wood move across them; along them they hold what moves (common practice, no source). */
const RIGID: readonly FastenerKind[] = ["pocket screw", "wood screw", "dowel", "lag screw", "bolt", "peg"];

/** What fixes each joint along a direction; joints that slide, or that only nails hold, are left out. */
export function anchorsAlong(
  axis: AxisIndex,
  joints: readonly Joint[],
  fasteners: ReadonlyMap<string, readonly Fastener[]>,
  holes: ReadonlyMap<string, readonly Hole[]>,
): readonly Anchor[] {
  return joints.flatMap((joint): readonly Anchor[] => {
    if (joint.kind === "floating" || joint.kind === "resting") return [];
    if (joint.glue) return glued(joint, axis);
    const rigid = (fasteners.get(joint.id) ?? []).filter(
      ({ kind, direction }) => RIGID.includes(kind) || (NAILS.has(kind) && Math.abs(direction[axis]) > 0.9),
    );
    if (rigid.length === 0) return [];
    // Where it crosses from part to part, not where its head is.
    const [low, high] = reachOf(joint.contact, axis);
    const placeOf = ({ head }: Fastener): number =>
      Math.min(high, Math.max(low, toNumber(head.at[axis]) / UNITS_PER_MM));
    const slackFor = (fastener: Fastener): number => slackOf(fastener, axis, holes.get(fastener.id) ?? []);
    const { kind, rod } = rigid[0] as Fastener;
    const fastener = { kind, rod: toNumber(rod) / UNITS_PER_MM };
    // What is made to slide has its own room at each fastener, and none where it is held.
    if (joint.kind === "sliding")
      return rigid.map((each) => ({ joint, low: placeOf(each), high: placeOf(each), slack: slackFor(each), fastener }));
    const [places, slacks] = [rigid.map(placeOf), rigid.map(slackFor)];
    return [{ joint, low: Math.min(...places), high: Math.max(...places), slack: Math.min(...slacks), fastener }];
  });
}

/** Glue holds over all that touches; of a tenon its cheeks, since the shoulder is end grain. */
function glued(joint: Joint, axis: AxisIndex): readonly Anchor[] {
  const home = joint.method.endsWith("tenon") ? joint.insertion : null;
  const held = joint.contact.filter(
    ({ normal }) => !home?.some((way, i) => way !== 0 && Math.abs(normal[i] ?? 0) > 0.5),
  );
  const [low, high] = reachOf(held.length > 0 ? held : joint.contact, axis);
  return [{ joint, low, high, slack: 0, fastener: null }];
}

/** From where to where two parts touch. Every joint has a contact. */
function reachOf(contacts: Joint["contact"], axis: AxisIndex): readonly [number, number] {
  const places = contacts.flatMap(({ polygons }) => polygons.flat().map((point) => point[axis] / UNITS_PER_MM));
  return [Math.min(...places), Math.max(...places)];
}

/** What the fastening leaves, or half of what an oversized hole is wider than the shank. */
function slackOf({ rod, slack }: Fastener, axis: AxisIndex, holes: readonly Hole[]): number {
  if (slack) return toNumber(slack[axis]) / UNITS_PER_MM;
  const wide = holes.find(({ kind }) => kind === "oversized")?.stages.at(-1)?.diameter;
  return wide === undefined ? 0 : Math.max(0, (toNumber(wide) - toNumber(rod)) / 2 / UNITS_PER_MM);
}
