/** Tenons that a groove or rabbet of their own part makes narrower: what is left of them is cut, drawn and told. */
import { less, subtract } from "../../../../units/rational.ts";
import { featureBox } from "../../../design/shapes/feature-box.ts";
import { INDICES, withAxis } from "../../../design/space.ts";
import type { Box, Part } from "../../../design.ts";
import type { BoxFeature } from "./boxes.ts";

/** The tenon without what cuts that run along it take off one of its sides. */
export function whatIsLeft({ features }: Part, tenon: BoxFeature): BoxFeature {
  const cuts = features.flatMap((each) =>
    each.kind === "groove" || each.kind === "rabbet" ? [featureBox(each as BoxFeature)] : [],
  );
  return cuts.reduce((so, cut) => withBox(so, without(featureBox(so), cut)), tenon);
}

function without(box: Box, cut: Box): Box {
  const covers = INDICES.map((i) => !less(box.low[i], cut.low[i]) && !less(cut.high[i], box.high[i]));
  const axis = INDICES.find((i) => !covers[i] && covers.every((each, k) => each || k === i));
  if (axis === undefined) return box;
  const [low, high] = [box.low[axis], box.high[axis]];
  if (!less(low, cut.low[axis]) && less(low, cut.high[axis]))
    return { ...box, low: withAxis(box.low, axis, cut.high[axis]) };
  if (!less(cut.high[axis], high) && less(cut.low[axis], high))
    return { ...box, high: withAxis(box.high, axis, cut.low[axis]) };
  return box;
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
