import { less, max, min } from "../../../units/rational.ts";
import type { Feature } from "../../design.ts";
import { featureBox } from "../shapes/feature-box.ts";
import type { Workpiece } from "../shapes/workpiece.ts";
import type { AxisIndex } from "../space.ts";
import type { Range, Section } from "./section.ts";

/**
 * From where to where a tenon may stand on the end of its part beside rabbets and grooves that run out there over its cheeks: a rabbet goes
 * on in the other part, and the tenon would stand in it; what is left of it beside a groove is fins. `taken`: whether only such cuts count
 * as leave nothing between the cheeks.
 */
export function besideCuts(
  { body, features }: Workpiece,
  end: { readonly axis: AxisIndex; readonly sign: 1 | -1 },
  { thin, broad, cheek }: Omit<Section, "wide">,
  kinds: readonly Feature["kind"][],
  taken: "in part" | "wholly" = "in part",
): Range {
  let [from, to] = [body.low[broad], body.high[broad]];
  for (const feature of features) {
    if (!("size" in feature) || !kinds.includes(feature.kind)) continue;
    const { low, high } = featureBox(feature);
    const atEnd = end.sign > 0 ? !less(high[end.axis], body.high[end.axis]) : !less(body.low[end.axis], low[end.axis]);
    const over =
      taken === "wholly"
        ? !less(cheek.low, low[thin]) && !less(high[thin], cheek.high)
        : less(low[thin], cheek.high) && less(cheek.low, high[thin]);
    if (!atEnd || !over) continue;
    if (!less(body.low[broad], low[broad])) from = max(from, high[broad]);
    else if (!less(high[broad], body.high[broad])) to = min(to, low[broad]);
  }
  return { low: from, high: to };
}
