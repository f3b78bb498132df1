/** Promise 5: holes keep off each other, off features that are not theirs, and off the faces of the part. */
import { boxRings, type Convex, fromRings } from "./convex.ts";
import { type Cylinder, hits, prism } from "./cylinder.ts";
import { distance } from "./distance.ts";
import { isBox, type Model, pairsOf } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { BoxFeature, Hole } from "./record.ts";
import { along, cross, dot, plus, times, type V3, ZERO } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

/** A slot is drawn out from its last stage: as many bores, an eighth of its width apart. */
export const stagesOf = ({ at, direction, stages, slot }: Hole): Cylinder[] =>
  stages.flatMap(({ diameter, depth }, i) => {
    const bore = { from: at, axis: direction, length: depth, radius: diameter / 2 };
    if (slot === null || i < stages.length - 1) return [bore];
    const reach = Math.max(0, slot.length - diameter) / 2;
    const n = Math.ceil((16 * reach) / diameter);
    return Array.from({ length: n + 1 }, (_, k) => ({
      ...bore,
      from: along(at, slot.along, n === 0 ? 0 : reach * ((2 * k) / n - 1)),
    }));
  });

/** Stands out of its part and cuts nothing. */
const STANDING = ["tenon", "tongue", "haunch", "tail"];

export function* holes(model: Model): Violations {
  for (const part of model.record.parts) {
    const mine = model.record.holes.filter((hole) => hole.part === part.id);
    const bores = new Map(mine.map((hole) => [hole, stagesOf(hole)]));
    for (const [a, b] of pairsOf(mine)) {
      const allowed = (a.for !== null && a.for === b.for) || a.plugged || b.plugged;
      if (!allowed && meet(bores.get(a) ?? [], bores.get(b) ?? []))
        yield violation("holes do not meet", part.id, `the holes for ${a.for} and ${b.for} meet`);
    }
    const cut = part.features.filter(isBox).filter(({ kind }) => !OPEN.includes(kind) && !STANDING.includes(kind));
    for (const feature of cut)
      for (const hole of mine) {
        const own = feature.for !== null && model.jointOf.get(hole.for ?? "")?.id === feature.for;
        if (!own && (bores.get(hole) ?? []).some((bore) => hits(bore, roomOf(feature))))
          yield violation(
            "hole keeps out of features",
            part.id,
            `the hole for ${hole.for} runs into a ${feature.kind}`,
          );
      }
    for (const [a, b] of pairsOf(cut.filter((feature) => feature.kind === "mortise")))
      if ((a.for ?? b.for) !== null && apart(model, a, b) < 1 - TOLERANCE)
        yield violation("mortises keep 1 mm", part.id, `those of ${a.for} and ${b.for} are closer`);
  }
}

/** Of two mortises; where both tenons are mitred their rooms may meet, and it is the tenons' parts that keep apart. */
function apart(model: Model, a: BoxFeature, b: BoxFeature): number {
  const [first, second] = [a, b].map((mortise) =>
    model.record.parts.find(({ features }) =>
      features.some((each) => each.kind === "mitre" && each.for !== null && each.for === mortise.for),
    ),
  );
  if (first === undefined || second === undefined) return distance(roomOf(a), roomOf(b));
  const [p, q] = [model.solid(first.id), model.solid(second.id)];
  return Math.min(...p.flatMap((one) => q.map((other) => distance(one, other))));
}

/** One bore as a prism of many sides; the other is exact. */
const meet = (a: readonly Cylinder[], b: readonly Cylinder[]): boolean =>
  a.some((bore) => b.some((other) => mayMeet(bore, other) && hits(other, prism(bore))));

/** Balls around the two bores that touch. */
function mayMeet(a: Cylinder, b: Cylinder): boolean {
  const middle = (c: Cylinder) => along(c.from, c.axis, c.length / 2);
  const reach = (c: Cylinder) => c.length / 2 + c.radius;
  return Math.hypot(...plus(middle(a), times(middle(b), -1))) < reach(a) + reach(b);
}

/** Tenons take no wood, and rounded edges and corners are no walls that a hole could run into. */
const OPEN = ["tenon", "round-over", "rounded corner"];

/** The wood that a feature takes away, a slot with square ends. */
export function roomOf({ kind, origin, along: u, across: v, into: w, size, radius = 0 }: BoxFeature): Convex {
  const place = (p: V3): V3 => plus(origin, plus(plus(times(u, p[0]), times(v, p[1])), times(w, p[2])));
  const mirrored = dot(cross(u, v), w) < 0;
  const rings = kind === "arch" ? archRings(size, radius) : boxRings(ZERO, size);
  return fromRings(rings.map((ring) => (mirrored ? [...ring].reverse() : ring).map(place)));
}

/** A piece of a cylinder over its chord, as a prism with its corners on the arc. */
function archRings([width, thick, rise]: V3, radius: number): V3[][] {
  const half = Math.asin(Math.min(1, width / (2 * radius)));
  const arc = Array.from({ length: 33 }, (_, i) => half * (1 - i / 16));
  const side = (y: number) =>
    arc.map((t): V3 => [width / 2 + radius * Math.sin(t), y, rise - radius + radius * Math.cos(t)]);
  const [front, back] = [side(0), side(thick)];
  const next = <T>(list: readonly T[], i: number) => list[(i + 1) % list.length] as T;
  // From right to left over the top, seen from the front: to the left of it is the wood that is taken.
  const sides = front.map((p, i): V3[] => [p, back[i] as V3, next(back, i), next(front, i)]);
  return [front, back.toReversed(), ...sides];
}
