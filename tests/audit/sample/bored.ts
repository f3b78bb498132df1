/** More holes and mortises in the parts of the samples. */
import { passed } from "../drills.ts";
import type { BuildRecord, DrillRow, Hole } from "../record.ts";
import { hole } from "./wood.ts";

/** Another hole in a part, bored with the rest of it. */
export function bore(record: BuildRecord, more: Hole): void {
  record.holes.push(more);
  machineOf(record, more.part)?.holes.push(record.holes.length - 1);
  record.drilling.push(...rowsOf(more, record.holes.length - 1, record.holes));
}

/** A row of the drilling table for each stage of a hole. */
export const rowsOf = (hole: Hole, index: number, all: readonly Hole[]): DrillRow[] =>
  hole.stages.map(({ diameter, depth }) => ({
    ...{ bit: "drill", diameter, holes: [index], what: "hole", jig: null, slot: null, backing: null },
    depth: depth + passed(hole, all, []),
    ...{ into: [], when: "before assembly", steps: [] },
  }));

/** A hole of the part's own, 6 across, from its front. */
export const knob = (record: BuildRecord, on: string, x: number, z: number, depth = 10): void =>
  bore(record, hole(on, "knob", { at: [x, 0, z], direction: [0, 1, 0], stages: [{ diameter: 6, depth }], for: null }));

/** A second mortise in a post of the frame, from its front, as of another joint; the first begins 16 behind the front. */
export function crossed(record: BuildRecord, deep: number): void {
  const post = record.parts.find((part) => part.id === "post.1");
  const [along, across, into] = [[1, 0, 0] as const, [0, 0, 1] as const, [0, 1, 0] as const];
  const room = { along, across, into, lean: 0, inPlace: false };
  post?.features.push({ kind: "mortise", for: "j2", origin: [20, 0, 110], size: [8, 40, deep], ...room });
  machineOf(record, "post.1")?.features.push(1);
}

const machineOf = (record: BuildRecord, part: string) =>
  record.steps
    .flatMap((step) => step.actions)
    .flatMap((action) => (action.do === "machine" && action.part === part ? [action] : []))[0];
