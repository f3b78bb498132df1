import { deciding, type HardwareKind, measure, word } from "./kind.ts";

/** A soft dot between a door, drawer or lid and its case. */
export const bumper: HardwareKind = {
  kind: "bumper",
  also: ["bumpers", "felt dot", "felt pad"],
  meaning: "A soft dot on which a door, drawer or lid comes to lie. It takes as much room as it is thick.",
  fields: {
    across: measure("Its diameter.", "3/8", "10"),
    thick: deciding(measure("How thick it is.", "1/16", "1.5"), "# thick"),
    held: word("How it is held: stuck on, or by a stem in a hole.", "stuck on", "stem"),
    stem: measure("The diameter of its stem.", "13/64", "5"),
    "stem long": measure("How long its stem is.", "5/16", "8"),
  },
  basis: "common practice, no source",
};
