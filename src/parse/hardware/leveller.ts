import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A foot on a thread, that is turned until the piece stands level. */
export const leveller: HardwareKind = {
  kind: "leveller",
  also: ["levellers", "leveler", "levelers", "levelling foot", "leveling foot"],
  meaning: "A foot on a threaded stem in an insert or tee nut, turned until the piece stands level.",
  fields: {
    across: measure("The diameter of its foot.", "1", "25"),
    high: deciding(measure("How high it holds the piece in the middle of its travel.", "1/2", "12"), "# high"),
    travel: deciding(measure("How far it can be turned out from lowest to highest.", "1/2", "12")),
    insert: deciding(measure("The diameter of the hole for its insert or tee nut.", "3/8", "10"), "hole #"),
    "insert long": measure("How long its insert is.", "1/2", "12"),
    stem: deciding(
      measure("How far its stem reaches into the wood when it is turned in.", "1", "25"),
      "stem # into the wood",
    ),
    thread: measure("The diameter of its stem.", "1/4", "6"),
  },
  basis: "common practice, no source",
};
