/** What is cut into a part while it is square, and what gives it its shape. */
import type { Feature, Part } from "../../design.ts";

export const isShape = (feature: Feature): boolean => "normal" in feature || "radius" in feature;

export const isEnd = ({ kind }: Feature): boolean => kind === "angled end";

const isInPlace = (feature: Feature): boolean => "inPlace" in feature && feature.inPlace === true;

/** Of a part, by their places: what is cut while it is square. */
export const cutsIn = (part: Part): readonly number[] =>
  part.features.flatMap((feature, i) => (isShape(feature) || isInPlace(feature) ? [] : [i]));
