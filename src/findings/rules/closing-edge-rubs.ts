import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const narrow = (gap: string): string =>
  doorExample(
    ["width: 18", "width: 6"],
    ["across: 16", "across: 4"],
    ["    hinges: hinge\n", `    gap: ${gap}\n    hinges: hinge\n`],
  );

export const closingEdgeRubs = rule<{
  readonly door: string;
  readonly out: string;
  readonly gap: string;
  readonly degrees: number;
}>({
  name: "closing-edge-rubs",
  severity: "warning",
  message: (a) =>
    `the inner corner of the closing edge of ${a.door} swings ${a.out} farther out than its front, and the gap there is ${a.gap}`,
  label: () => "rubs as it opens",
  help: (a) =>
    `plane a bevel of ${a.degrees}° on the closing edge, towards the inner face; or make the gap wider, or the door thinner`,
  explain: `A door turns about a pin in front of it, and its inner corner is farther from that than its front corner: by the root of the sum of the squares
of width and thickness, less the width. A wide door hardly notices; of a narrow thick one the corner strikes the other side.`,
  wrong: narrow("1/16"),
  right: narrow("1/8"),
  basis: "geometry",
});
