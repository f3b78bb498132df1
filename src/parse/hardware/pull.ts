import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A pull on two screws, which are driven from behind. */
export const pull: HardwareKind = {
  kind: "pull",
  also: ["pulls", "handle", "handles"],
  meaning: "A pull held by two screws from behind.",
  fields: {
    centres: deciding({ ...measure("From screw to screw.", "3", "96"), also: ["centers"] }, "# from screw to screw"),
    long: measure("Its length over all.", "3 1/2", "106"),
    out: measure("How far it stands out.", "1 1/8", "28"),
    foot: measure("How wide and high its feet are.", "3/8", "10"),
    screw: deciding(measure("The length of its screws.", "1", "25")),
    thread: measure("The diameter of its screws.", "5/32", "4"),
    "into the pull": measure("How far its screws have to reach into it.", "1/4", "6"),
    "most into the pull": measure("How deep its threads are.", "1/2", "12"),
  },
  basis: "common practice, no source",
};
