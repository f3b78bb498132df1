/** Promise 1: parts do not overlap, and joints touch where and as far as they say. */
import type { Convex } from "./convex.ts";
import { distance } from "./distance.ts";
import { type Model, near, pairsOf } from "./model.ts";
import { overlaps, TOLERANCE } from "./overlap.ts";
import type { Joint } from "./record.ts";
import { joined, type Touch, touches } from "./touch.ts";
import { apart, dot, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

/** Less than this is no face to put glue on, in mm². */
const LEAST_AREA = 1;

export function* fits(model: Model): Violations {
  const { record } = model;
  const bodies = [...record.parts, ...record.hardware].map((body) => body.id);
  for (const [a, b] of pairsOf(bodies))
    if (overlaps(model.solid(a), model.solid(b))) yield violation("parts do not overlap", a, `overlaps ${b}`);
  for (const { id, carriedBy } of record.hardware) {
    const [own, carrier] = [id, carriedBy].map((each) => model.solid(each) ?? []);
    if (own?.length === 0 || nearest(own ?? [], carrier ?? []) <= TOLERANCE) continue;
    yield violation("hardware is on what carries it", id, `does not touch ${carriedBy}`);
  }
  for (const joint of record.joints) {
    if (joint.kind === "fixed") yield* fixedJoint(model, joint);
    else yield* otherJoint(model, joint);
  }
}

function* fixedJoint(model: Model, joint: Joint): Violations {
  const { id, gap } = joint;
  const [a, b] = joint.parts.map(model.solid);
  if (a === undefined || b === undefined) return;
  if (gap > model.record.precision + TOLERANCE)
    yield violation("gap is at most one step", id, `leaves ${gap} mm, a step is ${model.record.precision}`);
  const found = touches(a, b, gap + TOLERANCE);
  const close = found.filter((touch) => touch.gap <= TOLERANCE || near(touch.gap, gap, TOLERANCE));
  if (close.reduce((so, touch) => so + touch.area, 0) < LEAST_AREA)
    yield violation("fixed joints touch", id, `${joint.parts.join(" and ")} share no face at a gap of ${gap} mm`);
  else if (joint.contact.length === 0) yield violation("contact is as measured", id, "touches, but lists no contact");
  yield* contacts(joint, found);
}

/** Declared and found contacts of one plane are compared together, since an area may be told in several pieces. */
function* contacts(joint: Joint, found: readonly Touch[]): Violations {
  const reach = joint.gap + TOLERANCE;
  const inPlane = (normal: V3, at: V3) => (other: { normal: V3; centre: V3 }) =>
    dot(normal, other.normal) > 0.9999 && Math.abs(dot(other.centre, normal) - dot(at, normal)) <= reach;
  for (const { centre, normal } of joint.contact) {
    const declared = joined(joint.contact.filter(inPlane(normal, centre)).map((contact) => ({ ...contact, gap: 0 })));
    const measured = joined(found.filter(inPlane(normal, centre)));
    if (declared === undefined || measured === undefined)
      yield violation("contact is as measured", joint.id, `nothing touches in the plane at ${centre}`);
    else if (!near(declared.area, measured.area, measured.area / 100))
      yield violation("contact is as measured", joint.id, `${declared.area} mm² of contact measure ${measured.area}`);
    else if (apart(declared.centre, measured.centre) > 0.1 + reach)
      yield violation(
        "contact is as measured",
        joint.id,
        `its centre is at ${measured.centre}, not ${declared.centre}`,
      );
  }
}

/** A panel in its groove, a drawer on its runner: beside each other, at most the gap and a step of rounding apart. */
function* otherJoint(model: Model, joint: Joint): Violations {
  const [a, b] = joint.parts.map(model.solid);
  const between = nearest(a ?? [], b ?? []);
  if (between > joint.gap + model.record.precision + TOLERANCE)
    yield violation("other joints are near", joint.id, `its parts lie ${between} mm apart, the gap is ${joint.gap}`);
}

/** The least distance of any two pieces. Those of which the boxes lie further apart than what was found are not looked at. */
function nearest(a: readonly Convex[], b: readonly Convex[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of a)
    for (const q of b) {
      const gaps = ([0, 1, 2] as const).map((i) => Math.max(p.low[i] - q.high[i], q.low[i] - p.high[i], 0));
      if (Math.hypot(...gaps) < least) least = Math.min(least, distance(p, q));
    }
  return least;
}
