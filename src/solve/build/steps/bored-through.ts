/** Holes that are bored on through what a part is put on: the screw of a knob goes through a front and the box behind it. */
import type { Joint } from "../../design.ts";
import type { Work } from "./draft.ts";

/** By their places in the plan: those in one part of a joint, for hardware on the other. */
export function boredThrough({ design, plan }: Work, { parts }: Pick<Joint, "parts">): readonly number[] {
  return plan.holes.flatMap((hole, i) => {
    if (hole.atBench || hole.for === null || !parts.some((id) => id === hole.part)) return [];
    const fitting = design.fittings.find(({ hardware }) => hardware.some(({ id }) => id === hole.for));
    return fitting && fitting.part !== hole.part && parts.some((id) => id === fitting.part) ? [i] : [];
  });
}
