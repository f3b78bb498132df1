import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A foot or glide under a part, on one screw. */
export const foot: HardwareKind = {
  kind: "foot",
  also: ["feet", "glide", "glides", "bun foot", "bun feet"],
  meaning:
    "A foot or glide that is bought, held by one screw or bolt in its middle. Its height is part of the outside.",
  fields: {
    across: deciding(measure("Its diameter.", "2", "50"), "# across"),
    high: deciding(measure("How high it holds the piece above the floor.", "2", "50"), "# high"),
    screw: deciding(measure("How far its screw reaches into the wood.", "1", "25"), "screw # into the wood"),
    thread: measure("The diameter of its screw.", "5/16", "8"),
    pilot: measure("The diameter of the hole for it.", "7/32", "6"),
  },
  basis: "common practice, no source",
};
