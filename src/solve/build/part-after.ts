/** A part while it is worked on: what later steps cut is still wood, what they bore is not there. */
import {
  boxPlanes,
  cut,
  EMPTY,
  flip,
  intersect,
  type Plane,
  placedSolid,
  planeThrough,
  type Solid,
  solidBox,
  subtract,
  subtractBox,
  unite,
} from "../../geometry/index.ts";
import type { Length } from "../../units/length.ts";
import { add } from "../../units/rational.ts";
import type { Build, BuiltPart } from "../build.ts";
import { featureBox } from "../design/shapes/feature-box.ts";
import { isInPlace } from "../design/shapes/in-place.ts";
import { standsOut } from "../design/shapes/kinds.ts";
import { type AxisIndex, INDICES, triple } from "../design/space.ts";
import { onBench, placedFeature } from "../design/turning.ts";
import type { Box, Direction, Feature, Point } from "../design.ts";

/** Features by their places, and holes, that steps from `first` to `last` make in a part. */
export function workIn({ steps, holes }: Pick<Build, "steps" | "holes">, part: string, first: number, last: number) {
  const actions = steps
    .filter(({ number }) => number >= first && number <= last)
    .flatMap((step) => step.actions)
    .flatMap((action) => (action.do === "machine" && action.part === part ? [action] : []));
  return {
    features: new Set(actions.flatMap(({ features }) => features)),
    holes: new Set(actions.flatMap((action) => action.holes).flatMap((i) => holes.slice(i, i + 1))),
  };
}

/** A part in a step; `earlier`: what it was before, on the bench, where something was cut by then. */
export interface PartInWork extends BuiltPart {
  readonly earlier?: Solid;
}

/** What a step makes of a part. */
export function partInWork(build: Pick<Build, "steps" | "holes">, built: BuiltPart, number: number): PartInWork {
  const before = partAfter(build, built, number - 1);
  const now = partAfter(build, built, number);
  const done = workIn(build, built.id, Number.NEGATIVE_INFINITY, number - 1).features;
  return done.size === 0 ? now : { ...now, earlier: onBench(before).solid };
}

/** When the step with this number is done. */
export function partAfter(build: Pick<Build, "steps" | "holes">, built: BuiltPart, number: number): BuiltPart {
  const later = workIn(build, built.id, number + 1, Number.POSITIVE_INFINITY).features;
  if (later.size === 0) return built;
  const part = { ...built, ...onBench(built) };
  const done = part.features.filter((_, i) => !later.has(i));
  const waiting = part.features.filter((_, i) => later.has(i));
  const solid = filled(part, done, waiting);
  const { turned } = built;
  if (!turned) return { ...built, solid, features: done };
  return {
    ...built,
    solid: placedSolid(solid, turned.placement),
    features: done.map((feature) => placedFeature(feature, turned.placement)),
    turned: { ...turned, solid, features: done },
  };
}

/** With the wood that is still where features will be. */
function filled({ solid, body, blank }: BuiltPart, done: readonly Feature[], waiting: readonly Feature[]): Solid {
  const whole = waiting.some(standsOut) ? blank : body;
  const rough = solidBox(whole.low, whole.high);
  const wood = waiting.map((feature) =>
    isInPlace(feature)
      ? sliceAt(whole, feature)
      : standsOut(feature)
        ? subtractBox(rough, body.low, body.high)
        : taken(rough, feature),
  );
  const left = wood.reduce<Solid>((so, each) => unite([so, without(done.reduce(worked, each), so)]), EMPTY);
  const all = unite([solid, without(left, solid)]);
  return solid.smooth ? { ...all, smooth: solid.smooth } : all;
}

/** What a feature takes from some wood. */
function taken(wood: Solid, feature: Feature): Solid {
  if (isSlanting(feature)) return EMPTY;
  if ("normal" in feature) return cut(wood, flip(planeOf(feature)));
  const { low, high } = featureBox(feature);
  return intersect(wood, boxPlanes(low, high));
}

function worked(wood: Solid, feature: Feature): Solid {
  if (standsOut(feature) || isSlanting(feature)) return wood;
  if ("normal" in feature) return cut(wood, planeOf(feature));
  const { low, high } = featureBox(feature);
  return subtractBox(wood, low, high);
}

/** All the wood between the two cheeks of a slot that is sawn across a corner: what is not there in the end was cut with the rest, or is the slot. */
function sliceAt({ low, high }: Box, { origin, across, size }: Extract<Feature, { inPlace?: true }>): Solid {
  const at = INDICES.find((i) => across[i] !== 0) as AxisIndex;
  const edge = (point: Point, value: Length): Point => triple((i) => (i === at ? value : point[i]));
  return solidBox(edge(low, origin[at]), edge(high, add(origin[at], size[1])));
}

/** A slot in a mitre lies aslant: it is no box of the part, and is drawn from the first. */
const isSlanting = (feature: Feature): boolean =>
  ("normal" in feature ? [feature.normal] : [feature.along, feature.across, feature.into]).some(
    (way) => !way.every(Number.isInteger),
  );

const without = (wood: Solid, other: Solid): Solid =>
  other.pieces.reduce(
    (so, { faces }) =>
      subtract(
        so,
        faces.map(({ plane }) => plane),
      ),
    wood,
  );

const planeOf = ({ origin, normal: [a, b, c] }: Extract<Feature, { normal: Direction }>): Plane =>
  planeThrough(origin, [BigInt(a), BigInt(b), BigInt(c)]);
