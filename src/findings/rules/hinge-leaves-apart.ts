import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

const hung = (hinge: string): string =>
  chestExample(
    ["height: 18 }", "height: 18 3/8 }"],
    ["piece:", `  hinge: { kind: butt hinge${hinge} }\npiece:`],
    ["back: 18, bottom: 17 1/4", "back: 18, bottom: 17 5/8"],
    [
      "to: [fore, rear, left-side, right-side], with: loose",
      "to: rear, with: butt hinges, opens: top, hardware: hinge",
    ],
    [
      "against: lid }",
      "against: lid, deep: left-side.back - 2 }\n  - { fit: knob, to: lid, face: top, deep: lid.front + 2 }",
    ],
  );

export const hingeLeavesApart = rule<{
  readonly door: string;
  readonly hold: string;
  readonly closed: string;
  readonly apart: string;
  /** A hinge that reaches over the gap, as it is written. */
  readonly hinge: string;
  readonly method: string;
}>({
  name: "hinge-leaves-apart",
  severity: "error",
  message: (a) =>
    `the hinges between ${a.door} and ${a.hold} are ${a.closed} thick when they are shut, and the gap there is ${a.apart} wider`,
  label: (a) => `hangs ${a.apart} off`,
  help: (a) =>
    `lay them on the face (hardware: outer: ${a.hinge}, and there { with: ${a.method}, hardware: outer }), make the gap narrower (gap, air gap), or put a strip ${a.apart} thick under one leaf`,
  explain: `The leaves of a butt hinge or continuous hinge lie on each other when it is shut, so that the gap between what hangs and what it hangs on is as wide as they are thick.
Where the gap is narrower they are let in; where it is wider, one of them has no wood under it. A strip of card makes up for 1/16 in or 1.5 mm. Hinges whose leaves lie on the
outer faces reach over a gap of any width.`,
  wrong: hung(""),
  right: hung(", leaf: 3/4, fit: on the face"),
  basis: "geometry; the most that card makes up for is common practice, no source",
});
