import { deciding, degrees, type HardwareKind, measure, word } from "./kind.ts";

/** A gauge where inches are used, a diameter in mm where they are not. */
export const GAUGE = {
  is: "number",
  inch: "6",
  mm: "3.5",
  meaning: "The gauge of its screws; in a metric plan their diameter in mm.",
} as const;

export const FITS = ["mortised", "in the gap", "on the face"] as const;

/** Two leaves on a pin. */
export const buttHinge: HardwareKind = {
  kind: "butt hinge",
  also: ["butt hinges", "butt"],
  meaning: "Two leaves that turn on a pin, screwed to the edge of a door and to what it hangs on.",
  fields: {
    long: deciding(measure("How long it is, along its pin.", "2", "50")),
    leaf: deciding(measure("How far a leaf reaches from the barrel into the gap.", "1/2", "12")),
    closed: deciding({
      ...measure("How thick both leaves are together when it is shut.", "1/8", "3"),
      also: ["closed thickness"],
    }),
    barrel: measure("The diameter of its barrel.", "1/4", "6"),
    screw: measure("The length of its screws.", "5/8", "16"),
    gauge: GAUGE,
    pilot: measure("The diameter of the holes for its screws.", "3/32", "2.5"),
    opens: degrees("How many degrees it opens.", 180),
    fit: word("How it is let in: mortised, folded into the gap, or laid on the face.", ...FITS),
  },
  basis:
    "2 in hinges for doors of 3/4 in (from memory); closed thickness, barrel and screws: common practice, no source",
};
