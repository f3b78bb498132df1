import { deciding, type HardwareKind, mass, measure, word } from "./kind.ts";
import { screwed } from "./screwed.ts";

/** A wheel on a plate. */
export const caster: HardwareKind = {
  kind: "caster",
  also: ["casters", "castor", "castors", "wheel"],
  meaning: "A wheel on a plate with four screws. Its height is part of the outside.",
  fields: {
    wheel: deciding(measure("The diameter of its wheel.", "2", "50"), "wheel #"),
    high: deciding(measure("How high it holds the piece above the floor.", "2 1/2", "70"), "# high"),
    turns: deciding(
      word("Whether it turns, and whether it can be locked.", "swivel", "swivel with brake", "fixed"),
      "#",
    ),
    carries: deciding(mass("What one of them carries.", 40), "carries #"),
    long: deciding(measure("How long its plate is.", "2 3/8", "60"), "plate # long"),
    wide: deciding(measure("How wide its plate is.", "2 3/8", "60"), "plate # wide"),
    plate: measure("How thick its plate is.", "3/32", "2.5"),
    tread: measure("How broad its wheel is.", "7/8", "22"),
    ...screwed(4, "3/4", "20"),
    thread: measure("The diameter of its screws.", "3/16", "5"),
    pilot: measure("The diameter of the holes for them.", "1/8", "3.5"),
  },
  basis: "common practice, no source",
};
