import { deciding, decidingWhereSaid, type HardwareKind, measure, measures } from "./kind.ts";

/** A knob on one screw, which is driven from behind. */
export const knob: HardwareKind = {
  kind: "knob",
  also: ["knobs"],
  meaning: "A knob held by one screw from behind.",
  fields: {
    across: deciding(measure("Its diameter.", "1 1/4", "32"), "# across"),
    out: decidingWhereSaid(measure("How far it stands out.", "1", "25"), "standing out #"),
    foot: measure("The diameter of its foot, where it lies against the wood.", "1/2", "12"),
    screw: deciding(measure("The length of its screw: the shortest sold that holds, if nothing is said.", "1", "25")),
    "screws sold": measures(
      "The lengths in which its screw is sold.",
      "3/4, 1, 1 1/4, 1 1/2, 1 3/4, 2",
      "20, 25, 30, 35, 40, 45, 50",
    ),
    thread: measure("The diameter of its screw.", "5/32", "4"),
    "into the knob": measure("How far its screw has to reach into it.", "1/4", "6"),
    "most into the knob": measure("How deep the thread of the knob is.", "1/2", "12"),
  },
  basis: "common practice, no source",
};
