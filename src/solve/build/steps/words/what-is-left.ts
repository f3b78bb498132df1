/** Tenons that a groove or rabbet of their own part makes narrower: what is left of them is cut, drawn and told. */
import { subtract } from "../../../../units/rational.ts";
import { featureBox } from "../../../design/shapes/feature-box.ts";
import { boxWithout, INDICES, isSolidBox } from "../../../design/space.ts";
import type { Box, Part } from "../../../design.ts";
import type { BoxFeature } from "./boxes.ts";

/** The tenon without what cuts that run along it take off one of its sides. */
export function whatIsLeft({ features }: Part, tenon: BoxFeature): BoxFeature {
  const cuts = features.flatMap((each) =>
    each.kind === "groove" || each.kind === "rabbet" ? [featureBox(each as BoxFeature)] : [],
  );
  return cuts.reduce((so, cut) => {
    const left = boxWithout(featureBox(so), cut);
    return isSolidBox(left) ? withBox(so, left) : so;
  }, tenon);
}

/** The feature, which lies as it did, in another box. */
function withBox(feature: BoxFeature, { low, high }: Box): BoxFeature {
  const ways = [feature.along, feature.across, feature.into];
  const sizes = ways.map((way) => {
    const axis = INDICES.find((i) => way[i] !== 0) ?? 0;
    return subtract(high[axis], low[axis]);
  });
  const origin = INDICES.map((i) => (ways.some((way) => way[i] < 0) ? high[i] : low[i]));
  return { ...feature, origin, size: sizes } as unknown as BoxFeature;
}
