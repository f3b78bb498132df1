import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

export const pinsMeetInDivider = rule<{ readonly part: string; readonly wood: string; readonly least: string }>({
  name: "pins-meet-in-divider",
  severity: "warning",
  message: (a) =>
    `shelf pins from both sides of ${a.part} leave ${a.wood} of wood between their holes, less than ${a.least}`,
  help: () => "set the pins of one shelf further in (in from ends), or put that shelf at another height",
  explain: `Holes from both sides of a divider, opposite each other, meet or nearly meet: the pin of one pushes out that of the other. Rows that stand two diameters apart do not.`,
  wrong: shelfExample(
    [
      "  shelf: {",
      "  divider: { made of: pine, as: upright, facing: left, at: middle, front: 0, back: 9 1/4, bottom: 0, under: lid }\n  shelf: {",
    ],
    ["  - { join: lid", "  - { join: lid, to: divider, with: screws }\n  - { join: lid"],
    [
      "between: [left-side, right-side], front: 0, bottom: 8 }",
      "between: [left-side, divider], front: 0, bottom: 8 }\n  other: { made of: pine, as: lying flat, between: [divider, right-side], front: 0, bottom: 8 }",
    ],
    ["shelf, to: [left-side, right-side]", "[shelf, other], to: [left-side, divider, right-side]"],
  ),
  right: shelfExample(
    [
      "  shelf: {",
      "  divider: { made of: pine, as: upright, facing: left, at: middle, front: 0, back: 9 1/4, bottom: 0, under: lid }\n  shelf: {",
    ],
    ["  - { join: lid", "  - { join: lid, to: divider, with: screws }\n  - { join: lid"],
    [
      "between: [left-side, right-side], front: 0, bottom: 8 }",
      "between: [left-side, divider], front: 0, bottom: 8 }\n  other: { made of: pine, as: lying flat, between: [divider, right-side], front: 0, bottom: 10 }",
    ],
    ["shelf, to: [left-side, right-side]", "[shelf, other], to: [left-side, divider, right-side]"],
  ),
  basis: "geometry; common practice, no source",
});
