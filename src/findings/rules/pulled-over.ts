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
  /** What pull tips it, and how high up; null where it falls by itself with all of it open. */
  readonly pull: string | null;
  readonly hand: string;
  /** The line that would tie it. */
  readonly strap: string;
  readonly deeper: string;
}>({
  name: "pulled-over",
  severity: "warning",
  message: (a) =>
    a.pull === null
      ? `the piece stands free, ${a.high} high, and falls over by itself when it is empty and all of it is open`
      : `the piece stands free, ${a.high} high: a pull of ${a.pull} at ${a.hand} from the floor tips it over when it is empty and all of it is open`,
  label: () => "not tied to the wall",
  why: () => "a child who climbs or reaches up pulls as much",
  help: (a) => `tie it to the wall (${a.strap}), or let what it stands on reach ${a.deeper} further to the front`,
  explain: `Whatever is tall for its depth can be pulled over. The safety standard for clothing storage leaves bookcases out, but its pull is a fair yardstick for
them: 10 lb (4.5 kg), forward, at a hand-hold up to 56 in (1422 mm) from the floor. Bookcases, hall tables, display cabinets and sideboards of 686 mm (27 in) and
more have to be sold in Australia with the warning to secure them with an anchor device, and the Consumer Product Safety Commission of the United States asks to
anchor bookcases as well as dressers. Pieces of 27 in and more are tested here that weigh 30 lb (13.6 kg) empty or say what they carry; empty and opened, when they
are lightest. As high as that hand-hold it is a warning, lower an advice. A wall strap ends it, comes on the shopping list, and gives a caution and a step.`,
  wrong: bookcase("11"),
  right: bookcase("24"),
  basis:
    "scope: Consumer Goods (Toppling Furniture) Information Standard 2024 (Australia); CPSC, release of November 17, 2020; pull: ASTM F2057-23, 9.2.2, outside of its scope",
});
