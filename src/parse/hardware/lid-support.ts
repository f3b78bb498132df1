import { deciding, type HardwareKind, mass, measure, range, word } from "./kind.ts";
import { screwed } from "./screwed.ts";

/** What keeps a lid from falling. */
export const lidSupport: HardwareKind = {
  kind: "lid support",
  also: ["lid supports", "lid stay", "lid stays"],
  meaning: "A stay between a chest and its lid. One that holds at every angle keeps the lid from falling on somebody.",
  fields: {
    holds: deciding(word("Where it holds the lid.", "every angle", "open only"), "holds at #"),
    carries: deciding(mass("The heaviest lid that one of them holds.", 9), "carries #"),
    high: deciding(measure("How far down the side it reaches.", "4", "100"), "# high"),
    reach: deciding(
      range(
        "How far apart the middles of its two halves can be: from when the lid is shut to when it stands open.",
        "1 1/2 to 8",
        "40 to 200",
      ),
      "middles of its halves # apart",
    ),
    wide: measure("How wide its plates are.", "1", "25"),
    thick: measure("How thick it is, folded.", "3/8", "10"),
    plate: measure("How far its plate reaches along the lid.", "2", "50"),
    edge: measure("How far from an edge its screws stand, at least: a lid pulls at them.", "9/16", "14"),
    ...screwed(2),
  },
  basis: "common practice, no source",
};
