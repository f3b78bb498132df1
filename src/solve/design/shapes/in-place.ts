import type { Feature } from "../../design.ts";

/** Sawn across a joint when that is together, as the slot of a key: not at the bench, so in no drawing of the loose part. */
export const isInPlace = (feature: Feature): feature is Extract<Feature, { readonly inPlace?: true }> =>
  "inPlace" in feature && feature.inPlace === true;
