/** Where parts are fixed to each other, seen along one direction. Millimetres. */
import { UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
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

/** Nails and brads bend, and are taken to let wood move (common practice, no source). */
const RIGID: readonly FastenerKind[] = ["pocket screw", "wood screw", "dowel"];

/** What fixes each joint along a direction; joints that slide, or that only nails hold, are left out. */
export function anchorsAlong(
  axis: AxisIndex,
  joints: readonly Joint[],
  fasteners: ReadonlyMap<string, readonly Fastener[]>,
  holes: ReadonlyMap<string, readonly Hole[]>,
): readonly Anchor[] {
  return joints.flatMap((joint): readonly Anchor[] => {
    if (joint.kind === "floating") return [];
    if (joint.glue) return glued(joint, axis);
    const rigid = (fasteners.get(joint.id) ?? []).filter(({ kind }) => RIGID.includes(kind));
    if (rigid.length === 0) return [];
    // Where it crosses from part to part, not where its head is.
    const [low, high] = reachOf(joint.contact, axis);
    const places = rigid.map(({ head }) => Math.min(high, Math.max(low, toNumber(head.at[axis]) / UNITS_PER_MM)));
    const slacks = rigid.map((fastener) => slackOf(fastener, holes.get(fastener.id) ?? []));
    const { kind, rod } = rigid[0] as Fastener;
    const fastener = { kind, rod: toNumber(rod) / UNITS_PER_MM };
    return [{ joint, low: Math.min(...places), high: Math.max(...places), slack: Math.min(...slacks), fastener }];
  });
}

/** Glue holds over all that touches; of a tenon its cheeks, since the shoulder is end grain. */
function glued(joint: Joint, axis: AxisIndex): readonly Anchor[] {
  const home = joint.method === "mortise and tenon" ? joint.insertion : null;
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

/** Half of what the oversized hole is wider than the shank. */
function slackOf({ rod }: Fastener, holes: readonly Hole[]): number {
  const wide = holes.find(({ kind }) => kind === "oversized")?.stages.at(-1)?.diameter;
  return wide === undefined ? 0 : Math.max(0, (toNumber(wide) - toNumber(rod)) / 2 / UNITS_PER_MM);
}
