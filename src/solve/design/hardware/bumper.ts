import { half } from "../../../units/rational.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { pilot } from "./screwed.ts";
import { drum } from "./solids.ts";

/** A thin disc; a hole only where it has a stem. */
export const fitBumper: Fitter = (site) => {
  const { id, item, part, axis, at } = site;
  const solid = drum(at, axis, outwards(site, measureOf(item, "thick")), half(measureOf(item, "across")));
  const holes =
    item.words.get("held") === "stem" ? [pilot(site, at, measureOf(item, "stem"), measureOf(item, "stem long"))] : [];
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};
