import { fitsNothing } from "../../../findings/rules/fits-nothing.ts";
import { millimetres } from "../../../units/length.ts";
import { add, half, min, subtract } from "../../../units/rational.ts";
import { shift, withAxis } from "../space.ts";
import { type Fitter, type FittingSite, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { reachOf, screwedOn } from "./screwed.ts";

/** The plate on the lid (common practice, no source). */
const PLATE = millimetres(3);

/** A body on the inside of the case, its upper end under the lid, or as high as its screws find wood; beside it a plate on the lid. */
export const fitLidSupport: Fitter = (site, context) => {
  const { id, item, part, against, axis, draft } = site;
  const because = !against ? "against" : axis === 2 ? "facing" : null;
  if (!against || because) {
    context.report(fitsNothing(draft.at, { item: item.kind, part: part.id, because: because ?? "against" }));
    return null;
  }
  const [high, wide, thick] = [measureOf(item, "high"), measureOf(item, "wide"), measureOf(item, "thick")];
  const under = against.body.low[2];
  // Its uppermost screw stands so far above its middle.
  const reach = reachOf(high);
  const wood = subtract(part.body.high[2], add(measureOf(item, "edge"), reach));
  const at = draft.place.up ? site.at : withAxis(site.at, 2, min(subtract(under, half(high)), wood));
  const body = screwedOn({ ...site, run: 2, at }, { long: high, wide, thick, passed: PLATE }, context);
  const [long, run] = [measureOf(item, "plate"), axis === 0 ? 1 : 0] as const;
  const beside = shift(at, axis, outwards(site, add(thick, half(wide))));
  const lid: FittingSite = {
    ...{ ...site, id: `${id}.plate`, part: against, body: against.body, axis: 2, sign: -1, run },
    at: withAxis(beside, 2, under),
  };
  const plate = screwedOn(lid, { long, wide, thick: PLATE }, context);
  if (!body || !plate) return null;
  const other = { id: lid.id, carriedBy: against.id, at: lid.at, solid: plate.solid, halfOf: id };
  return {
    hardware: [
      { id, item, joint: null, carriedBy: part.id, at, solid: body.solid },
      { ...other, item, joint: null },
    ],
    holes: [...body.holes, ...plate.holes],
  };
};
