/** Where a step works into its parts: a picture of the work shows the sides that are cut and bored. */
import type { Vec } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { Build, Step } from "../../../solve/build.ts";
import { standsOut } from "../../../solve/design/shapes/kinds.ts";
import type { Feature, Point } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";

export interface Mouth {
  readonly at: Vec;
  /** The way in. */
  readonly direction: Vec;
}

/** The mouths of the cuts and holes that a step makes in the parts that it shows. Tenons stand out and are seen anyway. */
export function mouthsOf(build: Build, step: Step): readonly Mouth[] {
  const shown = new Set(step.shows.fresh);
  return step.actions.flatMap((action) => {
    if (action.do !== "machine" || !shown.has(action.part)) return [];
    const part = build.parts.find(({ id }) => id === action.part);
    const cuts = action.features.flatMap((i) => openingOf(part?.features[i]) ?? []);
    const holes = action.holes.flatMap((i) => {
      const hole = build.holes[i];
      return hole ? [{ at: vec(hole.at), direction: hole.direction }] : [];
    });
    return [...cuts, ...holes];
  });
}

function openingOf(feature: Feature | undefined): Mouth | null {
  if (!feature || !("size" in feature) || standsOut(feature)) return null;
  const { origin, along, across, into, size } = feature;
  const middle = plus(times(along, toNumber(size[0]) / 2), times(across, toNumber(size[1]) / 2));
  return { at: plus(vec(origin), middle), direction: into };
}

const vec = ([x, y, z]: Point): Vec => [toNumber(x), toNumber(y), toNumber(z)];
