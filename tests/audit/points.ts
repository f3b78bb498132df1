/** Promise 5: a fastener passes the parts that it names and no others, and its point ends inside what holds it. */

import { convexOf } from "./convex.ts";
import { hits } from "./cylinder.ts";
import { partsOf } from "./driving.ts";
import { roomOf } from "./holes.ts";
import { inside } from "./keep.ts";
import { isBox, type Model } from "./model.ts";
import { overlaps, TOLERANCE } from "./overlap.ts";
import type { Fastener } from "./record.ts";
import { cylinderOf } from "./travel.ts";
import { along, cross, dot, minus, size, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* points(model: Model): Violations {
  for (const fastener of model.record.fasteners) {
    const { id, into, length, direction, head } = fastener;
    if (fastener.solids.length > 0) {
      yield* slotted(model, fastener);
      continue;
    }
    const point = along(head.at, direction, length);
    const holds = (part: string) =>
      model.solid(part).some((body) => body.faces.every((face) => dot(point, face.normal) <= face.offset + TOLERANCE));
    if (fastener.nut) yield* nutHolds(model, fastener, point);
    else if (into !== null && !holds(into)) yield violation("point ends inside", id, `its point is not in ${into}`);
    const named = partsOf(fastener);
    for (const { id: part } of model.record.parts) {
      const solid = model.solid(part);
      if (!named.includes(part)) {
        if (solid.some((body) => hits(cylinderOf(fastener), body)))
          yield violation("fastener passes what it says", id, `runs into ${part}`);
      } else {
        const passes = solid.some((body) => {
          const [start, end] = inside(body, head.at, direction) ?? [0, 0];
          return Math.min(end, length) - Math.max(start, 0) > TOLERANCE;
        });
        if (!passes) yield violation("fastener passes what it says", id, `does not pass ${part}`);
      }
    }
  }
}

/** A nut on the far side is on the bolt with its whole height, clear of the wood; a cross dowel lies across the bolt, on its axis, inside the wood. */
function* nutHolds(model: Model, { id, head, direction, length, into, nut }: Fastener, point: V3): Violations {
  if (!nut || into === null) return;
  const inLine = Math.abs(dot(nut.direction, direction)) > 0.9999;
  if (inLine) {
    const [near, far] = [dot(minus(nut.at, head.at), direction), dot(minus(point, nut.at), direction)];
    const aside = size(cross(minus(nut.at, head.at), direction));
    const free = model
      .solid(into)
      .every((body) => !hits({ from: nut.at, axis: direction, length: nut.height, radius: nut.diameter / 2 }, body));
    if (near <= 0 || far < nut.height - TOLERANCE || aside > TOLERANCE || !free)
      yield violation("point ends inside", id, "its nut does not sit on its end");
    return;
  }
  const bore = model.record.holes.find((hole) => hole.for === id && hole.kind === "nut");
  const reach = dot(minus(nut.at, head.at), direction);
  const across = minus(nut.at, along(head.at, direction, reach));
  const deep = size(across);
  const inside = model
    .solid(into)
    .some((body) => body.faces.every((f) => dot(along(nut.at, nut.direction, deep), f.normal) <= f.offset + TOLERANCE));
  const onAxis = size(cross(across, nut.direction)) <= TOLERANCE && Math.abs(dot(nut.direction, direction)) < 1e-6;
  const held = reach > 0 && length >= reach + nut.diameter / 2 - TOLERANCE;
  const bored = bore?.part === into && (bore.stages.at(-1)?.depth ?? 0) >= deep - TOLERANCE;
  if (!onAxis || !held || !inside || !bored)
    yield violation("point ends inside", id, "its cross dowel does not hold it");
}

const SLOTS = ["slot", "mortise", "groove"];

/** A spline, key, loose tenon or biscuit lies in a slot of each part that it names, and in the wood of none. */
function* slotted(model: Model, fastener: Fastener): Violations {
  const bodies = fastener.solids.map(convexOf);
  const joint = model.jointOf.get(fastener.id)?.id;
  for (const { id: part, features } of model.record.parts) {
    if (overlaps(bodies, model.solid(part)))
      yield violation("fastener passes what it says", fastener.id, `runs into ${part}`);
    const slots = features.filter(isBox).filter((each) => SLOTS.includes(each.kind) && each.for === joint);
    const lies = slots.some((slot) => overlaps(bodies, [roomOf(slot)]));
    if (lies !== partsOf(fastener).includes(part))
      yield violation(
        "fastener passes what it says",
        fastener.id,
        lies ? `lies in ${part}` : `does not lie in a slot of ${part}`,
      );
  }
}
