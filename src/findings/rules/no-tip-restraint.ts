import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

/** Deep enough to stand by itself when it is pulled. */
const press = (fittings: string): string =>
  shelfExample(
    ["depth: 9 1/4, height: 20 }", "depth: 32, height: 28 }\ncarries: clothes"],
    ["pine: { sold as: 1x10, wood: eastern white pine }", "pine: { sold as: 3/4 birch plywood, measures: 23/32 }"],
    ["front: 0, bottom: 0, top", "grain: up, front: 0, back: outside.back, bottom: 0, top"],
    ["front: 0, top: outside.top }", "grain: across, front: 0, back: outside.back, top: outside.top }"],
    ["front: 0, bottom: 8 }", "grain: across, front: 0, back: outside.back, bottom: 8 }"],
    ["joints:", `${fittings}joints:`],
  );

export const noTipRestraint = rule<{ readonly high: string; readonly line: string }>({
  name: "no-tip-restraint",
  severity: "warning",
  message: (a) => `the piece is ${a.high} high, carries clothes, and nothing ties it to the wall`,
  label: () => "not tied to the wall",
  help: (a) => `add a wall strap high at its back (${a.line})`,
  explain: `Also a chest that stands by itself can be pulled over by a child who climbs in its drawers. What holds clothes and is 27 in (686 mm) high or more
is tied to a stud. The wall strap comes on the shopping list, and the plan gets a step for it.`,
  wrong: press(""),
  right: press("fittings:\n  - { fit: wall strap, to: lid, face: back }\n"),
  basis: "ASTM F2057-23, scope",
});
