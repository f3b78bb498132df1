/** What is done in a move, for the record. */

import type { Action } from "../../build.ts";
import type { Hardware, Joint } from "../../design.ts";
import type { Drive } from "../order/plan.ts";
import { boredThrough } from "./bored-through.ts";
import type { Work } from "./draft.ts";
import { drivings } from "./driving.ts";
import { staysOn } from "./finishing/staying.ts";
import { fitActions } from "./hardware.ts";
import type { Move } from "./moves.ts";
import { OPEN } from "./open-time.ts";

/** What happens, in order: lay down, bring, glue, drill in place, drive, clamp. */
export function actionsOf(work: Work, move: Move): readonly Action[] {
  const joints = move.work.map(({ joint }) => joint);
  const glued = joints.filter((joint) => joint.glue).map((joint) => joint.id);
  const driven = move.work.flatMap((w) => w.drives);
  const start: readonly Action[] = move.starts
    ? [{ do: "add", parts: move.present, to: [], how: "straight", legs: [] }]
    : [];
  const touched = joints.map((joint) => joint.parts.find((id) => move.present.includes(id)) as string);
  return [
    ...start,
    ...(glued.length > 0 ? [{ do: "glue", joints: glued, openMinutes: OPEN.usual } as const] : []),
    {
      do: "add",
      parts: move.arriving,
      to: [...new Set(touched)],
      how: move.union.legs ? "tilted" : "straight",
      legs: move.union.legs ?? [{ along: move.along, distance: null }],
    },
    ...drillings(work, driven),
    ...drivings(driven),
    ...borings(
      work,
      joints.flatMap((joint) => boredThrough(work, joint)),
    ),
    ...(glued.length > 0 ? [{ do: "clamp", joints: glued } as const, { do: "release", joints: glued } as const] : []),
    ...fitActions(work.plan.hardware.filter((each) => joints.some(forGood(work, each)))),
  ];
}

/** Hardware of what comes off again is only tried, but for what stays on. */
const forGood =
  (work: Work, hardware: Hardware) =>
  ({ id }: Joint): boolean =>
    id === hardware.joint &&
    (staysOn(work, hardware) || !work.plan.removable.some(({ joints }) => joints.includes(id)));

/** Pilots that are drilled in place, part by part. */
function drillings(work: Work, drives: readonly Drive[]): readonly Action[] {
  const wanted = new Set(drives.map(({ fastener }) => fastener.id));
  return borings(
    work,
    work.plan.holes.flatMap((hole, i) => (!hole.atBench && hole.for !== null && wanted.has(hole.for) ? [i] : [])),
  );
}

function borings({ plan }: Work, holes: readonly number[]): readonly Action[] {
  const byPart = new Map<string, number[]>();
  for (const i of holes) {
    const part = plan.holes[i]?.part ?? "";
    byPart.set(part, [...(byPart.get(part) ?? []), i]);
  }
  return [...byPart].map(([part, own]) => ({ do: "machine", part, features: [], holes: own }));
}
