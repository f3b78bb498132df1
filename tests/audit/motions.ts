/** Promise 6: what opens makes its whole motion without touching anything. */
import { type Convex, mapped } from "./convex.ts";
import { prism } from "./cylinder.ts";
import type { Model } from "./model.ts";
import { overlaps } from "./overlap.ts";
import type { Motion } from "./record.ts";
import { plus, times, turned, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

type Pose = Motion["poses"][number];

export function* motions(model: Model): Violations {
  const { record } = model;
  const all = [...record.parts, ...record.hardware].map((body) => body.id);
  const solids = new Map(all.map((id) => [id, withHeads(model, id)]));
  const solid = (id: string): readonly Convex[] => solids.get(id) ?? [];
  for (const motion of record.motions) {
    const opened = new Map<string, readonly Convex[]>();
    for (const { motion: name, open } of motion.needs) {
      const other = record.motions.find((candidate) => candidate.name === name);
      const pose = other?.poses.find((candidate) => candidate.at >= open);
      if (other !== undefined && pose !== undefined)
        for (const id of other.parts) opened.set(id, posed(solid(id), pose));
    }
    const still = all.filter((id) => !motion.parts.includes(id));
    for (const pose of motion.poses)
      for (const id of motion.parts) {
        const moved = posed(solid(id), pose);
        const struck = still.find((other) => overlaps(moved, opened.get(other) ?? solid(other)));
        if (struck !== undefined)
          yield violation("motion is free", motion.name, `${id} strikes ${struck} at ${pose.at}`);
      }
  }
}

const posed = (solid: readonly Convex[], { rotate, shift }: Pose): readonly Convex[] =>
  solid.map((body) => mapped(body, (p: V3) => plus(turned(p, ...rotate.about, rotate.degrees), shift)));

/** A part with the heads that stand out of it. */
function withHeads(model: Model, id: string): readonly Convex[] {
  const proud = model.record.fasteners.filter(
    (f) => f.head.seat === "proud" && f.through[0] === id && f.head.height > 0,
  );
  const heads = proud.map(({ head, direction }) =>
    prism({ from: head.at, axis: times(direction, -1), length: head.height, radius: head.diameter / 2 }, 32),
  );
  return [...model.solid(id), ...heads];
}
