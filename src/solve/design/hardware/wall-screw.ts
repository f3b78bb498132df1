import { half } from "../../../units/rational.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { fromBehind } from "./from-behind.ts";
import { measureOf } from "./items.ts";
import { drum } from "./solids.ts";

/** Only its head stands in the piece; the hole goes right through to the wall. */
export const fitWallScrew: Fitter = (site) => {
  const { id, item, part, axis, at } = site;
  const solid = drum(at, axis, outwards(site, measureOf(item, "head high")), half(measureOf(item, "head")));
  const holes = fromBehind(site, measureOf(item, "thread"), [at]);
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};
