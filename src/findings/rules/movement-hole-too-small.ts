import { rule } from "../finding.ts";
import { fixedAcrossGrain } from "./fixed-across-grain.ts";

export const movementHoleTooSmall = rule<{
  readonly part: string;
  readonly movement: string;
  /** The hole as it is, and as it has to be. */
  readonly hole: string;
  readonly wanted: string;
  readonly from: number;
  readonly until: number;
  readonly place: string;
}>({
  name: "movement-hole-too-small",
  severity: "warning",
  message: (a) =>
    `the oversized holes for ${a.part} are ${a.hole} wide, and its wood moves ${a.movement}: they have to be ${a.wanted}`,
  label: () => "the screws will hold it fast",
  why: (a) => `from ${a.from} % moisture to ${a.until} % in ${a.place}`,
  help: (a) => `write \`oversized: ${a.wanted}\`, and put washers under heads that are no wider than that`,
  explain: `An oversized hole lets wood move by what it is wider than the screw's shank, half of it to either side. If the moisture on the day of building
is said (\`moisture\` of the stock), the hole is as wide as the shank and the movement from that day together; if not, the screw may stand at one end of its way, and
the hole is as wide as the shank and twice the movement at it.`,
  wrong: fixedAcrossGrain.right.replace("oversized: 5/16", "oversized: 3/16"),
  right: fixedAcrossGrain.right,
  basis: "Wood Handbook FPL-GTR-190, Table 13-5 and Eq. 13-2; geometry",
});
