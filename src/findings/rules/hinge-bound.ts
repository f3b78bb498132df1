import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const fit = (closed: string): string =>
  doorExample(["butt hinge, leaf: 1/2", `butt hinge, leaf: 1/2, fit: in the gap, closed: ${closed}`]);

export const hingeBound = rule<{
  readonly door: string;
  readonly closed: string;
  readonly gap: string;
  /** How deep each leaf would have to be let in. */
  readonly deep: string;
}>({
  name: "hinge-bound",
  severity: "error",
  message: (a) =>
    `the hinges of ${a.door} are ${a.closed} thick when they are shut, and the gap is ${a.gap}: it does not close`,
  label: () => "thicker than the gap",
  help: (a) =>
    `let each leaf in by ${a.deep} (fit: mortised), take hinges that close to ${a.gap}, or make the gap ${a.closed}`,
  explain: `Hinges that fold into the gap without a mortise have to be no thicker, shut, than the gap. Otherwise the door stops before it is shut, springs
back, and draws its screws. Three measures decide: closed thickness, gap, and how deep each leaf is let in: half of what is too much.`,
  wrong: fit("3/16"),
  right: fit("1/8"),
  basis: "instructions of hinge makers, and arithmetic",
});
