import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

export const chestWithoutAir = rule<{
  readonly lid: string;
  readonly openings: number;
  readonly least: string;
  /** What to write for two holes, and where. */
  readonly lines: string;
}>({
  name: "chest-without-air",
  severity: "warning",
  message: (a) =>
    a.openings === 0
      ? `the chest under the lid ${a.lid} has no opening for air`
      : `the chest under the lid ${a.lid} has one opening for air that a wall does not close`,
  label: () => "shuts tight",
  help: (a) =>
    `bore two holes of ${a.least} or more high in its sides or front, far from each other: ${a.lines}; or end the walls ${a.least} below the lid`,
  explain: `A child can climb into a chest, and the lid can shut. Two openings that neither a wall behind the chest nor what lies in it closes give it air. An
opening in the back does not count. Catches that have to be pulled open from outside are no part of a chest. This counts for chests of 1.1 ft³ (31 dm³) and more.`,
  wrong: chestExample([
    ", hole: [{ in: left, from front: 4, from top: 3, diameter: 1 }, { in: left, from back: 4, from top: 3, diameter: 1 }]",
    "",
  ]),
  right: chestExample(),
  basis: "number and size of openings: common practice, no source; scope: ASTM F834",
});
