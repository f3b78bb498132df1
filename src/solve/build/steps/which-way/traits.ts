/** What tells the sides of a part from each other: its cuts, its shapes, the holes that are bored at the bench, its bands. */

import type { Vec } from "../../../../geometry/index.ts";
import { type Movement, movePoint, turnVec } from "../../../../geometry/transform.ts";
import { dot, minus, plus, times } from "../../../../geometry/vec.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { extent, faceAxis, facePosition, INDICES, middle, normalOf, triple } from "../../../design/space.ts";
import type { Box, Feature, Hole, Part } from "../../../design.ts";

/** Something at a place: how far it reaches along each axis, and where it looks, where it does either. */
export interface Trait {
  readonly label: string;
  readonly at: Vec;
  readonly reach?: Vec;
  readonly way?: Vec;
}

export const movedTrait = ({ label, at, reach, way }: Trait, turn: Movement): Trait => ({
  ...{ label, at: movePoint(at, turn) },
  ...(reach && { reach: turnVec(reach, turn).map(Math.abs) as unknown as Vec }),
  ...(way && { way: turnVec(way, turn) }),
});

/** Every one of some is one of the others, and none of those is left over. */
export function sameTraits(some: readonly Trait[], others: readonly Trait[]): boolean {
  const left = [...others];
  return (
    some.length === others.length &&
    some.every((trait) => {
      const found = left.findIndex((other) => isSame(trait, other));
      if (found >= 0) left.splice(found, 1);
      return found >= 0;
    })
  );
}

/** Whether a turn changes none of them. */
export const staysSame = (traits: readonly Trait[], turn: Movement): boolean =>
  sameTraits(
    traits,
    traits.map((each) => movedTrait(each, turn)),
  );

const isSame = (one: Trait, other: Trait): boolean =>
  one.label === other.label &&
  isNear(one.at, other.at, TOLERANCE) &&
  isNear(one.reach, other.reach, TOLERANCE) &&
  isNear(one.way, other.way, 1e-6);

const isNear = (u: Vec | undefined, v: Vec | undefined, by: number): boolean =>
  u && v ? u.every((c, i) => Math.abs(c - (v[i] as number)) <= by) : u === v;

/** Seen from afar, and in the picture of the step: slopes and curves; what is cut for a joint is not, but for mitres. */
const SEEN: ReadonlySet<Feature["kind"]> = new Set<Feature["kind"]>([
  ...(["arch", "round-over", "rounded corner", "cut-out", "taper", "chamfer", "bevel", "angled end", "notch"] as const),
]);

function isSeen({ body, features }: Part, feature: Feature, eased: boolean): boolean {
  const { kind, for: joint } = feature;
  if (joint !== null)
    return kind === "mitre" && !features.some((other) => other.kind === "tenon" && other.for === joint);
  return SEEN.has(kind) && (eased || !isEased(body, feature));
}

/** A chamfer that takes less off is not seen from afar. */
const SMALL = UNITS_PER_MM * 6;

/** Whether an edge has a small chamfer. */
export function isEased(body: Box, feature: Feature): feature is Extract<Feature, { normal: unknown }> {
  if (feature.kind !== "chamfer" || !("normal" in feature)) return false;
  const { normal, origin } = feature;
  const edge = triple((i) => toNumber(body[normal[i] > 0 ? "high" : "low"][i]));
  const cut = dot(
    minus(
      edge,
      triple((i) => toNumber(origin[i])),
    ),
    normal,
  );
  return INDICES.every((i) => normal[i] === 0 || cut / Math.abs(normal[i]) < SMALL);
}

/** Its outline, and what of its shape is seen at a glance; `eased`: small chamfers too. */
export const outlineOf = (part: Part, eased = false): readonly Trait[] => [
  ofBox("body", part.body),
  ...part.features.filter((each) => isSeen(part, each, eased)).map((each) => featureTrait(part.body, each)),
];

/** All of it. `holes`: those of all parts. */
export const traitsOf = (part: Part, holes: readonly Hole[]): readonly Trait[] => [
  ofBox("body", part.body),
  ...part.features.map((each) => featureTrait(part.body, each)),
  ...holes.flatMap((hole) => (hole.part === part.id && hole.atBench && !hole.spare ? [holeTrait(part, hole)] : [])),
  ...makingOf(part).banding.map(
    ({ edge, item }): Trait => ({
      label: item,
      at: triple((i) => toNumber(i === faceAxis(edge) ? facePosition(part.body, edge) : middle(part.body, i))),
      way: normalOf(edge),
    }),
  ),
];

const ofBox = (label: string, box: Box): Trait => ({
  label,
  at: triple((i) => toNumber(middle(box, i))),
  reach: triple((i) => toNumber(extent(box, i))),
});

export function featureTrait(body: Box, feature: Feature): Trait {
  if ("normal" in feature) {
    const [centre, way] = [triple((i) => toNumber(middle(body, i))), feature.normal];
    const off = minus(
      triple((i) => toNumber(feature.origin[i])),
      centre,
    );
    // Of all points of a plane the one nearest to the middle of the part turns with it.
    return { label: feature.kind, at: plus(centre, times(way, dot(off, way) / dot(way, way))), way };
  }
  const { kind, into, size } = feature;
  if (isSquare(feature)) return { ...ofBox(kind, featureBox(feature)), way: into };
  return { label: `${kind} ${size.map(toNumber).join()}`, at: triple((i) => toNumber(feature.origin[i])), way: into };
}

/** A plain hole right through is the same from both sides. */
export function holeTrait({ body }: Part, { kind, at, direction, stages, through, slot }: Hole): Trait {
  const label = [
    kind,
    ...stages.map(
      ({ diameter, depth, cone }) => `${toNumber(diameter)}${cone ? "cone" : through ? "" : `×${toNumber(depth)}`}`,
    ),
    ...(slot ? [toNumber(slot.length)] : []),
  ].join(" ");
  const axis = INDICES.find((i) => Math.abs(direction[i]) > 0.99);
  const plain = through && stages.length === 1 && axis !== undefined;
  return {
    label,
    at: triple((i) => toNumber(plain && i === axis ? middle(body, i) : at[i])),
    ...(!plain && { way: direction }),
  };
}
