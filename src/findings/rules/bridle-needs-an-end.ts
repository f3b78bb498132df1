import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const bridleNeedsAnEnd = rule<{
  readonly join: string;
  readonly to: string;
}>({
  name: "bridle-needs-an-end",
  severity: "error",
  message: (a) => `${a.join} has no slot to go into at an end of ${a.to}`,
  help: () =>
    "let both run over each other at an end of the part under `to`, flush on two sides, the tongue thinner than they are",
  explain: `A bridle is an open mortise and tenon: the end of the part named under \`to\` is slotted, and the part named under \`join\` loses its cheeks there. Both are equally thick, flush with each other, and run through each other; the tongue is thinner than they are. Where neither ends, write half lap.`,
  wrong: stepExample(["with: screws", "with: bridle"]),
  right: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: bridle"]),
  basis: "the language",
});
