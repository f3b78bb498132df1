import { deciding, decidingWhereSaid, type HardwareKind, measure, measures } from "./kind.ts";

/** A pull on two screws, which are driven from behind. */
export const pull: HardwareKind = {
  kind: "pull",
  also: ["pulls", "handle", "handles"],
  meaning: "A pull held by two screws from behind.",
  fields: {
    centres: deciding({ ...measure("From screw to screw.", "3", "96"), also: ["centers"] }, "# from screw to screw"),
    long: measure("Its length over all.", "3 1/2", "106"),
    out: decidingWhereSaid(measure("How far it stands out.", "1 1/8", "28"), "standing out #"),
    foot: measure("How wide and high its feet are.", "3/8", "10"),
    screw: deciding(measure("The length of its screws: the shortest sold that holds, if nothing is said.", "1", "25")),
    "screws sold": measures(
      "The lengths in which its screws are sold.",
      "3/4, 1, 1 1/4, 1 1/2, 1 3/4, 2",
      "20, 25, 30, 35, 40, 45, 50",
    ),
    thread: measure("The diameter of its screws.", "5/32", "4"),
    "into the pull": measure("How far its screws have to reach into it.", "1/4", "6"),
    "most into the pull": measure("How deep its threads are.", "1/2", "12"),
  },
  basis: "common practice, no source",
};
