import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

const tower = (high: string): string =>
  shelfExample(
    ["depth: 9 1/4, height: 20 }", `depth: 12, height: ${high} }\ncarries: clothes`],
    ["pine: { sold as: 1x10, wood: eastern white pine }", "pine: { sold as: 3/4 MDF, measures: 3/4 }"],
    ["front: 0, bottom: 0, top", "grain: up, front: 0, back: outside.back, bottom: 0, top"],
    ["front: 0, top: outside.top }", "grain: across, front: 0, back: outside.back, top: outside.top }"],
    ["front: 0, bottom: 8 }", "grain: across, front: 0, back: outside.back, bottom: 8 }"],
  );

export const tipsOver = rule<{
  readonly test: string;
  /** How strongly its top would have to be held back: "13 lb". */
  readonly hold: string;
  readonly further: string;
  readonly strap: boolean;
  /** The line that would tie it. */
  readonly line: string;
  /** It does not say what it carries, and is taken to be for clothes. */
  readonly assumed: boolean;
}>({
  name: "tips-over",
  severity: "error",
  message: (a) => `the piece tips over when it is tested as clothing storage is: ${a.test}`,
  label: () => "tips over",
  why: (a) => `somebody would have to hold its top back with ${a.hold} to keep it from falling forward`,
  help: (a) =>
    (a.strap
      ? `let what it stands on reach ${a.further} further to the front, or let drawers open less far; the strap alone should not hold it`
      : `tie it to the wall with a wall strap (${a.line}), and let what it stands on reach ${a.further} further to the front`) +
    (a.assumed ? "; or, if no clothes go into it, say what does (carries: books, carries: 20 lb)" : ""),
  explain: `A chest of drawers that tips over kills small children. A piece for clothes of 27 in (686 mm) and 30 lb (13.6 kg) or more, with 3.2 ft³ (91 dm³)
or more behind drawers and doors, is tested three ways: everything open and the drawers filled with 8.5 lb to the cubic foot; pulled forward with 10 lb at the
highest hand-hold; and with 60 lb on the edge of each open drawer while carpet under its back tilts it. It has to stay, and to be tied to the wall besides.
Shelves for clothes that stand open are tested by the pull alone. With a wall strap what is left of this is a warning.`,
  wrong: tower("60"),
  right: tower("26"),
  basis: "ASTM F2057-23, scope and tests 9.2.1 to 9.2.3, as moments",
});
