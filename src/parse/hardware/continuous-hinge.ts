import { FITS, GAUGE } from "./butt-hinge.ts";
import { deciding, degrees, type HardwareKind, measure, word } from "./kind.ts";

/** A hinge as long as the edge that it is on, cut from a length. */
export const continuousHinge: HardwareKind = {
  kind: "continuous hinge",
  also: ["continuous hinges", "piano hinge", "strip hinge"],
  meaning: "A hinge as long as the lid or door, cut to its length.",
  fields: {
    leaf: deciding(measure("How far a leaf reaches from the barrel into the gap.", "1/2", "12")),
    closed: deciding({
      ...measure("How thick both leaves are together when it is shut.", "1/16", "1.5"),
      also: ["closed thickness"],
    }),
    barrel: measure("The diameter of its barrel.", "3/16", "4"),
    short: measure("How far it stays inside each end.", "1/16", "2"),
    "screws apart": measure("How far its screws are apart.", "2", "50"),
    screw: measure("The length of its screws.", "1/2", "12"),
    gauge: { ...GAUGE, inch: "4", mm: "3" },
    pilot: measure("The diameter of the holes for its screws.", "1/16", "2"),
    opens: degrees("How many degrees it opens.", 180),
    fit: word("How it is let in: mortised, folded into the gap, or laid on the face.", ...FITS),
  },
  basis: "common practice, no source",
};
