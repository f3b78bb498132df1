/** The room that drawers pass through when they are pulled out: heads keep out of it where they can. */
import type { Hull, Vec } from "../../../geometry/index.ts";
import { TOLERANCE } from "../../../units/index.ts";
import type { Fastener, Part } from "../../design.ts";
import { outstanding } from "../reach/index.ts";
import { fastBodies, type Link } from "./links.ts";

interface Lane {
  readonly low: Vec;
  readonly high: Vec;
}

export interface Lanes {
  /** Whether a head that stands proud, or a nut, reaches into one: their boxes are asked, so it may be said of one that only comes near. */
  meets(fasteners: readonly Fastener[]): boolean;
}

/** Of every body that runs, part by part. */
export function lanesOf(parts: readonly Part[], links: readonly Link[]): Lanes {
  const running = links.filter(({ joint }) => joint.kind === "running");
  const joints = running.length > 0 ? links.map(({ joint }) => joint) : [];
  const bodies = running.length > 0 ? fastBodies({ parts, joints }) : [];
  const lanes = running.flatMap(({ joint, ends: [runner] }): readonly Lane[] => {
    const out = joint.arrangements[0]?.motion?.poses.at(-1)?.shift;
    const body = bodies.find((each) => each.includes(runner)) ?? [];
    return out ? body.flatMap((i) => laneOf(parts[i] as Part, out)) : [];
  });
  return {
    meets: (fasteners) =>
      lanes.length > 0 &&
      fasteners.some((fastener) => outstanding(fastener).some((room) => lanes.some((lane) => reaches(room, lane)))),
  };
}

const laneOf = ({ solid: { low, high } }: Part, out: Vec): Lane => ({
  low: AXES.map((i) => Math.min(low[i], low[i] + out[i])) as unknown as Vec,
  high: AXES.map((i) => Math.max(high[i], high[i] + out[i])) as unknown as Vec,
});

const reaches = ({ vertices }: Hull, { low, high }: Lane): boolean =>
  AXES.every((i) => {
    const at = vertices.map((vertex) => vertex[i]);
    return Math.max(...at) > low[i] + TOLERANCE && Math.min(...at) < high[i] - TOLERANCE;
  });

const AXES = [0, 1, 2] as const;
