import { half } from "../../../units/rational.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { pilot } from "./screwed.ts";
import { drum } from "./solids.ts";

/** As round as it is wide: it stands anyhow when it is tight. */
export const fitHook: Fitter = (site) => {
  const { id, item, part, axis, at } = site;
  const solid = drum(at, axis, outwards(site, measureOf(item, "out")), half(measureOf(item, "across")));
  const holes = [pilot(site, at, measureOf(item, "pilot"), measureOf(item, "screw"))];
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};
