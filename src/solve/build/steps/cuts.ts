/** What is cut into a part while it is square, and what gives it its shape. */
import { isInPlace } from "../../design/shapes/in-place.ts";
import type { Feature, Part } from "../../design.ts";

/** The corner that is cut off a tenon before that is fitted. */
export const isOfTenon = (feature: Feature, { features }: Part): boolean =>
  feature.kind === "mitre" && features.some((each) => each.kind === "tenon" && each.for === feature.for);

export const isShape = (feature: Feature, part: Part): boolean =>
  ("normal" in feature || "radius" in feature) && !isOfTenon(feature, part);

export const isEnd = ({ kind }: Feature): boolean => kind === "angled end";

/** Of a part, by their places: what is cut while it is square. */
export const cutsIn = (part: Part): readonly number[] =>
  part.features.flatMap((feature, i) => (isShape(feature, part) || isInPlace(feature) ? [] : [i]));
