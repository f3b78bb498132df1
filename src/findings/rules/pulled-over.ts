import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

const bookcase = (deep: string): string =>
  shelfExample(
    ["depth: 9 1/4, height: 20 }", `depth: ${deep}, height: 60 }\ncarries: 5 lb`],
    ["pine: { sold as: 1x10, wood: eastern white pine }", "pine: { sold as: 3/4 MDF, measures: 3/4 }"],
    ["front: 0, bottom: 0, top", "grain: up, front: 0, back: outside.back, bottom: 0, top"],
    ["front: 0, top: outside.top }", "grain: across, front: 0, back: outside.back, top: outside.top }"],
    ["front: 0, bottom: 8 }", "grain: across, front: 0, back: outside.back, bottom: 8 }"],
  );

export const pulledOver = rule<{
  readonly high: string;
  /** What pull tips it, and how high up. */
  readonly pull: string;
  readonly hand: string;
  /** The line that would tie it. */
  readonly strap: string;
  readonly deeper: string;
}>({
  name: "pulled-over",
  severity: "warning",
  message: (a) =>
    `the piece stands free, ${a.high} high: a pull of ${a.pull} at ${a.hand} from the floor tips it over when it is empty`,
  label: () => "not tied to the wall",
  why: () => "a child who climbs or reaches up pulls as much",
  help: (a) => `tie it to the wall (${a.strap}), or let what it stands on reach ${a.deeper} further to the front`,
  explain: `Whatever is tall for its depth can be pulled over. The safety standard for clothing storage leaves bookcases out, but its pull is a fair yardstick for
them: 10 lb (4.5 kg), forward, at a hand-hold up to 56 in (1422 mm) from the floor, taken for pieces of 27 in (686 mm) and more. The piece is tested empty, when it is
lightest: books stand in it or not. The Consumer Product Safety Commission of the United States asks to anchor bookcases to the wall as well as dressers. A wall strap
ends this warning, puts the strap on the shopping list, and gives a caution and a step.`,
  wrong: bookcase("11"),
  right: bookcase("24"),
  basis:
    "CPSC, release of November 17, 2020: anchor furniture such as bookcases and dressers; ASTM F2057-23, 9.2.2 and height of its scope, as a yardstick outside of that scope",
});
