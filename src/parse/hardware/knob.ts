import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A knob on one screw, which is driven from behind. */
export const knob: HardwareKind = {
  kind: "knob",
  also: ["knobs"],
  meaning: "A knob held by one screw from behind.",
  fields: {
    across: deciding(measure("Its diameter.", "1 1/4", "32"), "# across"),
    out: measure("How far it stands out.", "1", "25"),
    foot: measure("The diameter of its foot, where it lies against the wood.", "1/2", "12"),
    screw: deciding(measure("The length of its screw.", "1", "25")),
    thread: measure("The diameter of its screw.", "5/32", "4"),
    "into the knob": measure("How far its screw has to reach into it.", "1/4", "6"),
    "most into the knob": measure("How deep the thread of the knob is.", "1/2", "12"),
  },
  basis: "common practice, no source",
};
