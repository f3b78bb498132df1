import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const dowelDoesNotFit = rule<{
  readonly join: string;
  readonly to: string;
  readonly room: string;
  readonly wide: string;
  /** The largest dowel that does fit; null where none does. */
  readonly largest: { readonly diameter: string; readonly length: string } | null;
}>({
  name: "dowel-does-not-fit",
  severity: "error",
  message: (a) =>
    `${a.largest ? "the dowel does not fit" : "no dowel fits"} between ${a.join} and ${a.to}: the wood is ${a.room} deep there and ${a.wide} wide`,
  help: ({ largest }) =>
    largest
      ? `the largest that fits is \`dowel: { diameter: ${largest.diameter}, length: ${largest.length} }\``
      : "make the thinner part thicker, or what is cut into it there shallower (`deep` of a dado, groove or rabbet); or use another joint",
  explain: `A dowel is at most half as thick as the wood beside it, and lies half in each part, its holes a little deeper. In a part that is too thin for half of it, a third is enough. Under each hole 1/8 in (3 mm) of wood is left.`,
  wrong: stepExample(["with: screws", "with: dowels, dowel: { diameter: 3/8, length: 5 }"]),
  right: stepExample(["with: screws", "with: dowels"]),
  basis: "common practice, no source",
});
