import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

export const hingeLeafToEdge = rule<{
  readonly door: string;
  readonly thick: string;
  readonly leaf: string;
  readonly least: string;
  readonly most: string;
}>({
  name: "hinge-leaf-to-edge",
  severity: "warning",
  message: (a) =>
    `the leaves of the hinges are ${a.leaf} wide and ${a.door} is ${a.thick} thick: less than ${a.least} of it stays behind them`,
  label: () => "leaf too near to the inner face",
  help: (a) => `take hinges whose leaves are at most ${a.most} wide (leaf: …), or a thicker door`,
  explain: `A leaf that reaches nearly through the edge of a door leaves a thin wall of wood behind its mortise, which breaks out when it is chopped, and
its screws sit near the inner face.`,
  wrong: doorExample(["leaf: 1/2", "leaf: 11/16"]),
  right: doorExample(),
  basis: "common practice, no source",
});
