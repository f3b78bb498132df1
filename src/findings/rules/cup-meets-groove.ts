import { doorExample, framed } from "../door-example.ts";
import { rule } from "../finding.ts";

export const cupMeetsGroove = rule<{
  readonly stile: string;
  readonly wide: string;
  /** Null where the cup breaks into the groove. */
  readonly left: string | null;
  readonly least: string;
  readonly wider: string;
}>({
  name: "cup-meets-groove",
  severity: "error",
  message: (a) =>
    a.left
      ? `between the cups of the hinges and the groove for the panel ${a.left} of ${a.stile} is left, less than ${a.least}`
      : `the cups of the hinges break into the groove for the panel in ${a.stile}, which is ${a.wide} wide`,
  label: () => "too narrow for cup and groove",
  help: (a) =>
    `make the stiles at least ${a.wider} wide, and better 2 mm more; or the groove less deep; or bore the cups nearer to the edge (cup from edge: …)`,
  explain: `A stile takes the cup of a hinge from its outer edge and the groove for the panel from its inner one. What is left is its width, less the
groove, less the distance of the cup from the edge and its 35 mm. The bit that breaks into the groove has ruined the door: 1 mm has to stay, and
3 are better. For a 35 mm cup and a 3/8 in groove a stile is 2 1/8 in or 54 mm wide.`,
  wrong: doorExample(...framed(", stiles: 1 7/8")),
  right: doorExample(...framed(", stiles: 2 1/4")),
  basis: "arithmetic; 1 mm, better 3: common practice, no source",
});
