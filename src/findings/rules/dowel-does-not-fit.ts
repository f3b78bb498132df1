import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const dowelDoesNotFit = rule<{
  readonly join: string;
  readonly to: string;
  readonly room: string;
  readonly wide: string;
}>({
  name: "dowel-does-not-fit",
  severity: "error",
  message: (a) => `no dowel fits between ${a.join} and ${a.to}: the wood is ${a.room} deep there and ${a.wide} wide`,
  help: () => "use a shorter or thinner dowel, or another joint",
  explain: `A dowel is at most half as thick as the wood beside it, and lies half in each part, its holes a little deeper. In a part that is too thin for half of it, a third is enough. Under each hole 1/8 in (3 mm) of wood is left.`,
  wrong: stepExample(["with: screws", "with: dowels, dowel: { diameter: 3/8, length: 5 }"]),
  right: stepExample(["with: screws", "with: dowels"]),
  basis: "common practice, no source",
});
