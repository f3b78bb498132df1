/** Hardware that is one block, screwed to one face: stops and wall brackets. */
import type { Fitter } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { screwedOn } from "./screwed.ts";

export const fitBlock: Fitter = (site, context) => {
  const { id, item, part, at } = site;
  const size = { long: measureOf(item, "long"), wide: measureOf(item, "wide"), thick: measureOf(item, "thick") };
  const made = screwedOn(site, size, context);
  return (
    made && { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid: made.solid }], holes: made.holes }
  );
};
