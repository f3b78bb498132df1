/** Promise 3: what is added or removed travels its legs without passing through the body that stays. */
import { type Convex, convexOf, mapped } from "./convex.ts";
import { type Cylinder, prism } from "./cylinder.ts";
import type { Model } from "./model.ts";
import { bodyOf, type Moment, type Replay } from "./moments.ts";
import { overlaps, TOLERANCE } from "./overlap.ts";
import type { Fastener, Leg } from "./record.ts";
import { along, cross, isParallel, minus, plus, size, times, turned, unit, type V3, ZERO } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* travel(model: Model, { moments }: Replay): Violations {
  // Shelf pins that are out of their holes.
  const pulled = new Set<string>();
  for (const { action, bodies, step } of moments) {
    if (action.do === "pull" || action.do === "push") yield* pins(model, step, action, pulled);
    if (action.do !== "add" && action.do !== "remove") continue;
    const stays = bodyOf(bodies, action.do === "add" ? action.to[0] : action.from[0]);
    if (stays === undefined) continue;
    const moving = new Set(action.parts);
    const staying = [...stays].filter((part) => !moving.has(part));
    const outward = action.do === "add" ? [...action.legs].reverse().map(reversed) : action.legs;
    const last = outward.at(-1);
    if (last === undefined || !("along" in last) || last.distance !== null)
      yield violation("parts come from afar", `step ${step.number}`, `${action.parts.join(" ")} starts close by`);
    yield* way(model, step, [...moving], staying, outward, pulled);
  }
  for (const pin of pulled) yield violation("pins are in at the end", pin, "is pulled and not pushed in again");
}

/** Only what a shelf lies on is pulled, and pushed in when it is out. */
function* pins(
  { record }: Model,
  { number }: Moment["step"],
  action: Extract<Moment["action"], { fasteners: string[] }>,
  pulled: Set<string>,
): Violations {
  for (const id of action.fasteners) {
    const isPin = record.joints.some(({ method, fasteners }) => method === "shelf pins" && fasteners.includes(id));
    if (!isPin || pulled.has(id) !== (action.do === "push"))
      yield violation("pins are in at the end", id, `cannot be told to ${action.do} in step ${number}`);
    if (action.do === "pull") pulled.add(id);
    else pulled.delete(id);
  }
}

const reversed = (leg: Leg): Leg =>
  "along" in leg ? { ...leg, along: times(leg.along, -1) } : { ...leg, degrees: -leg.degrees };

/** Farther than any piece is long, in mm. */
const FAR = 1e5;
/** A turn is looked at this often, in degrees. */
const STEP = 0.25;

/** A stretch of the way out: from where it begins, and by how much it goes straight on. */
interface Stretch {
  readonly pose: (p: V3) => V3;
  readonly by: V3;
}

const STILL = (p: V3): V3 => p;

function stretches(legs: readonly Leg[]): Stretch[] {
  let pose = STILL;
  return legs.flatMap((leg) => {
    const start = pose;
    if ("along" in leg) {
      const by = times(leg.along, leg.distance ?? FAR);
      pose = (p) => plus(start(p), by);
      return [{ pose: start, by }];
    }
    const [at, axis] = leg.about;
    const turn = (degrees: number) => (p: V3) => turned(start(p), at, axis, degrees);
    pose = turn(leg.degrees);
    const steps = Math.ceil(Math.abs(leg.degrees) / STEP);
    return Array.from({ length: steps + 1 }, (_, i) => ({ pose: turn((leg.degrees * i) / steps), by: ZERO }));
  });
}

function* way(
  model: Model,
  step: Moment["step"],
  moving: readonly string[],
  staying: readonly string[],
  outward: readonly Leg[],
  pulled: ReadonlySet<string>,
): Violations {
  const dowels = model.record.fasteners
    .filter((fastener) => fastener.travelsWith !== null && !pulled.has(fastener.id))
    .flatMap((dowel) => {
      const [leaves, rests] = [moving, staying].map((side) => side.includes(dowel.travelsWith ?? ""));
      return leaves || rests
        ? [{ dowel, flat: dowel.solids.length > 0, peg: pegOf(dowel), leaves, others: leaves ? staying : moving }]
        : [];
    });
  for (const { pose, by } of stretches(outward)) {
    const moved = (bodies: readonly Convex[]) => (pose === STILL ? bodies : bodies.map((body) => mapped(body, pose)));
    const solids = new Map(moving.map((part) => [part, moved(model.solid(part))]));
    for (const [part, solid] of solids)
      for (const other of staying)
        if (overlaps(solid, model.solid(other), by))
          yield violation("travel is free", part, `passes through ${other} in step ${step.number}`);
    for (const { dowel, flat, peg, leaves, others } of dowels) {
      const own = leaves ? moved(peg) : peg;
      for (const other of others) {
        // What is not round has a slot that is cut out of the solid: it must be free to move like any other wood.
        if (!flat && inItsHole(dowel, other, pose, by)) continue;
        const free = leaves ? !overlaps(own, model.solid(other), by) : !overlaps(solids.get(other) ?? [], own, by);
        const check = isMate(dowel, other) ? "dowels slide along their holes" : "travel is free";
        if (!free) yield violation(check, dowel.id, `runs into ${other} in step ${step.number}`);
      }
    }
  }
}

/** As solids; the same fastener is asked for at each moment. */
function pegOf(dowel: Fastener): readonly Convex[] {
  const known = PEGS.get(dowel);
  if (known) return known;
  const peg = dowel.solids.length > 0 ? dowel.solids.map(convexOf) : [prism(cylinderOf(dowel))];
  PEGS.set(dowel, peg);
  return peg;
}

const PEGS = new WeakMap<Fastener, readonly Convex[]>();

const isMate = (dowel: Fastener, part: string): boolean => dowel.through.includes(part) || dowel.into === part;

/** A dowel leaves the part that it is let into along its own axis, and has not strayed from it before. */
function inItsHole(dowel: Fastener, part: string, pose: (p: V3) => V3, by: V3): boolean {
  const ends = [dowel.head.at, along(dowel.head.at, dowel.direction, dowel.length)];
  const strays = ends.map((p) => size(cross(minus(pose(p), p), dowel.direction)));
  const onward = size(by) === 0 ? ZERO : unit(by);
  return isMate(dowel, part) && strays.every((d) => d <= TOLERANCE) && isParallel(onward, dowel.direction, 1e-4);
}

export const cylinderOf = (fastener: Fastener): Cylinder => ({
  from: fastener.head.at,
  axis: fastener.direction,
  length: fastener.length,
  radius: fastener.rod / 2,
});
