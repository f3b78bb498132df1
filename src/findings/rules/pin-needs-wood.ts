import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

export const pinNeedsWood = rule<{ readonly part: string; readonly wood: string; readonly deep: string }>({
  name: "pin-needs-wood",
  severity: "error",
  message: (a) => `${a.part} has no wood for a shelf pin: the hole is ${a.deep} deep, and there is ${a.wood} of wood`,
  help: () => "move the pins (in from ends), take a thicker side, or put the shelf on cleats",
  explain: `A shelf pin sits in a hole 3/8 in (8 mm) deep in the side, just under the shelf. The side must be there, and thicker than the hole is deep.`,
  wrong: shelfExample(
    [
      "left-side: { made of: pine, as: upright, facing: left, left: 0, front: 0,",
      "left-side: { made of: thin, as: upright, facing: left, left: 0, front: 0, back: 9 1/4,",
    ],
    ["screws, from: left-side", "glue"],
  ),
  right: shelfExample(),
  basis: "common practice, no source",
});
