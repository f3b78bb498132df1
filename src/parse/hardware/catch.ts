import { deciding, type HardwareKind, mass, measure, word } from "./kind.ts";
import { screwed } from "./screwed.ts";

/** What holds a door shut: a body in the case, a strike on the door. */
export const holdShut: HardwareKind = {
  kind: "catch",
  also: ["catches", "magnetic catch", "magnet catch", "roller catch"],
  meaning: "A catch in the case that holds a door shut by a strike on it.",
  fields: {
    works: deciding(
      word("What it holds with: a pull opens both of these from inside and outside.", "magnet", "roller"),
      "with a #",
    ),
    holds: deciding(mass("What it takes to pull it open, as a mass.", 4)),
    long: deciding(measure("How long its body is, across the way that the door goes.", "1 3/4", "45"), "# long"),
    reach: measure("How long its body is the other way, from the strike inwards.", "5/8", "16"),
    high: measure("How far its body stands off what it is screwed to.", "1/2", "13"),
    strike: measure("How thick its strike is.", "1/16", "1.5"),
    "strike long": measure("How long its strike is.", "1 1/2", "38"),
    "strike wide": measure("How wide its strike is.", "1/2", "13"),
    ...screwed(2),
  },
  basis: "common practice, no source",
};
