import { deciding, type HardwareKind, mass, measure } from "./kind.ts";
import { screwed } from "./screwed.ts";

/** What keeps a piece from tipping: a bracket on it, tied to the wall. */
export const wallStrap: HardwareKind = {
  kind: "wall strap",
  also: ["wall straps", "anti-tip strap", "anti-tip bracket", "tip restraint"],
  meaning: "A strap or chain from a bracket on the piece to one in the wall, so that it cannot tip over.",
  fields: {
    pull: deciding(mass("What it holds, as a mass: 50 lb or 23 kg at least.", 22.68)),
    long: measure("How long its bracket is.", "2", "50"),
    wide: measure("How wide its bracket is.", "5/8", "16"),
    thick: measure("How thick its bracket is.", "1/8", "3"),
    ...screwed(2),
    "wall screw": deciding(measure("The length of the screw that goes into the stud.", "2 1/2", "65")),
  },
  basis: "pull: the load of a laboratory's test of tip restraints; the rest is common practice, no source",
};
