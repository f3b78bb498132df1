import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

const withBatten = (left: string, right: string): string =>
  chestExample(
    [
      "to: [fore, rear, left-side, right-side], with: loose",
      "to: rear, with: butt hinges, opens: top }\n  - { join: batten, to: lid, with: screws",
    ],
    [
      "against: lid }",
      "against: lid, deep: left-side.back - 2 }\n  - { fit: knob, to: lid, face: top, deep: lid.front + 2 }",
    ],
    [
      "joints:",
      `  batten: { made of: panel, as: on edge, facing: front, grain: across, left: ${left}, right: ${right}, front: 8, bottom: 15, top: 17 1/4 }\njoints:`,
    ],
  );

export const shutsWithoutPlay = rule<{
  readonly name: string;
  readonly moving: string;
  readonly other: string;
  readonly play: string;
}>({
  name: "shuts-without-play",
  severity: "warning",
  message: (a) => `${a.moving} rubs on ${a.other} whenever ${a.name} is shut: there is no room between them`,
  label: () => "slides along what it shuts against",
  help: (a) =>
    `leave ${a.play} between ${a.moving} and ${a.other}; or chamfer the edge that goes in, as far as they lie beside each other`,
  explain: `What shuts comes to lie on something, and stops there. Where a face of it slides along another one before that, as the rim of a lid does down the outside
of its chest, the two need room: hinges have play, and wood swells.`,
  wrong: withBatten("3/4", "29 1/4"),
  right: withBatten("13/16", "29 3/16"),
  basis: "common practice, no source",
});
