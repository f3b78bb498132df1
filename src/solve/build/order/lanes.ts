/** The room that drawers pass through when they are pulled out: heads keep out of it where they can. */
import type { Hull, Vec } from "../../../geometry/index.ts";
import { TOLERANCE } from "../../../units/index.ts";
import type { Fastener, Part } from "../../design.ts";
import { outstanding } from "../reach/index.ts";
import { components, type Link, LOOSE } from "./links.ts";

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
  const bodies = components(
    parts.map((_, i) => i),
    links.filter(({ joint }) => !LOOSE.includes(joint.kind)),
  );
  const lanes = bodies.flatMap((body): readonly Lane[] => {
    // Both slides of a drawer say the same.
    const runner = running.find(({ ends }) => body.includes(ends[0]));
    const out = runner?.joint.arrangements[0]?.motion?.poses.at(-1)?.shift;
    return out ? body.map((i) => laneOf(parts[i] as Part, out)) : [];
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
