import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

const twoShelves = (sheet: string): string =>
  shelfExample(
    ["measures: 23/32", `measures: 23/32, sheet: ${sheet}`],
    ["bottom: 4 }", "bottom: 4, alike: upper-shelf }\n  upper-shelf: { like: shelf, bottom: 7 }"],
    ["to: shelf,", "to: [shelf, upper-shelf],"],
  );

export const alikeNotOnOneSheet = rule<{ readonly parts: readonly string[]; readonly boards: number }>({
  name: "alike-not-on-one-sheet",
  severity: "warning",
  message: (a) => `${nameSome(a.parts)} are to be alike, and the layout needs ${a.boards} sheets or boards for them`,
  label: () => "not on one sheet",
  help: () => "ask for fewer of them to be alike, or choose the sheets so that they match",
  explain:
    "Two sheets of the same name may differ by 1/32 in and in colour, so parts that have to match are cut from one. The layout keeps them together wherever it finds a way; these it could not.",
  wrong: twoShelves("{ wide: 4, long: 24 }"),
  right: twoShelves("{ wide: 8, long: 24 }"),
  basis: "common practice, no source",
});
