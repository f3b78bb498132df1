import type { Length } from "../../../../units/length.ts";
import { subtract } from "../../../../units/rational.ts";
import { standsOut } from "../../../design/shapes/kinds.ts";
import { type AxisIndex, axisOf, faceOf, INDICES } from "../../../design/space.ts";
import type { Feature, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { fromNearer, sideWord } from "./measured.ts";

export type BoxFeature = Extract<Feature, { readonly size: unknown }>;
export type PlaneFeature = Extract<Feature, { readonly normal: unknown }>;

/** Where the feature begins and ends in a direction. */
export function spanOf(feature: BoxFeature, axis: AxisIndex): { low: Length; high: Length } {
  const directions = [feature.along, feature.across, feature.into] as const;
  const k = directions.findIndex((d) => d[axis] !== 0) as 0 | 1 | 2;
  const size = feature.size[k];
  const from = feature.origin[axis];
  const to = subtract(from, directions[k][axis] > 0 ? { n: -size.n, d: size.d } : size);
  return directions[k][axis] > 0 ? { low: from, high: to } : { low: to, high: from };
}

/** "in the back face, 1/8 in from the left edge, 1/2 in from the top end" */
export function placeText(work: Work, part: Part, feature: BoxFeature): string {
  const into = axisOf(feature.into);
  const where = INDICES.filter((axis) => axis !== into).flatMap((axis) => {
    const { low, high } = spanOf(feature, axis);
    return fromNearer(work, part, axis, low, high) ?? [];
  });
  return [sideOf(part, feature), ...where].join(", ");
}

/** "in the back face" */
export function sideOf(part: Part, feature: BoxFeature): string {
  const into = axisOf(feature.into);
  // A tenon stands out of the face that it points from.
  const face = faceOf(into, (feature.into[into] as number) < 0 !== standsOut(feature));
  return `${standsOut(feature) ? "at" : "in"} the ${face} ${sideWord(part, into)}`;
}
