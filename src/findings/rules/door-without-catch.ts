import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const STOP = "{ fit: stop, to: cabinet.bottom-panel, along: across, deep: finishes.slab.back + 3/8 }";

export const doorWithoutCatch = rule<{
  readonly door: string;
  readonly part: string;
  /** A whole line of `fittings`; null where nothing lies at the free edge that it could be screwed to. */
  readonly line: string | null;
}>({
  name: "door-without-catch",
  severity: "advice",
  message: (a) => `nothing holds ${a.door} shut`,
  label: () => "no catch",
  help: (a) => `add a catch, under \`fittings\`: \`- ${a.line ?? `{ fit: catch, to: …, against: ${a.part} }`}\``,
  explain: `Butt hinges and continuous hinges have no spring: a door on them swings open by itself where the floor or the wall is a little out of plumb.
Accept this if it has a lock or a turn button.`,
  wrong: doorExample([
    "{ fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }",
    STOP.replace("to: cabinet.bottom-panel,", "to: cabinet.bottom-panel, face: top,"),
  ]),
  right: doorExample(),
  basis: "common practice, no source",
});
