import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const dovetailDoesNotFit = rule<{
  readonly join: string;
  readonly to: string;
  readonly tails: number;
  /** What a tail would measure where it is narrow; null: nothing. */
  readonly base: string | null;
  readonly pin: string;
  readonly thick: string;
  readonly tall: string;
  readonly least: string;
}>({
  name: "dovetail-does-not-fit",
  severity: "error",
  message: (a) =>
    `${a.tails} ${a.tails === 1 ? "tail" : "tails"} of ${a.join} and pins of ${a.pin} have no room in ${a.tall}: ${a.base === null ? "nothing is left of a tail" : `a tail would be ${a.base} wide at its base, in wood ${a.thick} thick`}`,
  help: (a) => `write fewer \`tails:\` or a narrower \`pin:\`; tails, pins and wood need ${a.least} at least`,
  explain: `A tail gets narrower towards its base, by the slope times the thickness of the other part on each side. What is left there, the pins beside it and the wood itself must be strong enough to be sawn.`,
  wrong: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: dovetail, tails: 8"]),
  right: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: dovetail, tails: 2"]),
  basis: "common practice, no source",
});
