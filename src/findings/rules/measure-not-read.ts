import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

type Problem =
  | "two numbers"
  | "strange sign"
  | "no value"
  | "nothing between"
  | "bracket not closed"
  | "bracket not opened"
  | "ends early"
  | "too deep"
  | "arguments";

interface Arguments {
  readonly text: string;
  readonly problem: Problem;
  /** The text at the place. */
  readonly part: string;
  readonly more: string | undefined;
}

const LABELS: Readonly<Record<Problem, string>> = {
  "two numbers": "a second number",
  "strange sign": "not part of a measure",
  "no value": "a measure is wanted here",
  "nothing between": "a sign is missing before this",
  "bracket not closed": "opened here, not closed",
  "bracket not opened": "closed here, not opened",
  "ends early": "something is missing behind this",
  "too deep": "too many brackets in brackets",
  arguments: "needs other values in its brackets",
};

const HELP: Readonly<Record<Problem, string>> = {
  "two numbers": "write a sign between them: 2 * 3/4; feet come before inches: 2' 6\"",
  "strange sign": "use numbers, names, + - * / and brackets",
  "no value": "write a number or a name",
  "nothing between": "write + - * or / there; blanks in a name become hyphens: side-panel",
  "bracket not closed": "write ) where it ends",
  "bracket not opened": "take the ) out, or write ( where it begins",
  "ends early": "write the other number, or take the sign out",
  "too deep": "take the formula apart, and give the pieces names under sizes",
  arguments: "write what it needs",
};

export const measureNotRead = rule<Arguments>({
  name: "measure-not-read",
  severity: "error",
  message: (a) => `\`${shorten(a.text)}\` cannot be read as a measure`,
  label: (a) => LABELS[a.problem],
  help: (a) => (a.more === undefined ? HELP[a.problem] : `write in the brackets ${a.more}`),
  explain: `A measure is written the way it is said: \`34\`, \`34 1/2\`, \`3/4\`, \`2' 6"\`, \`2 ft 6 in\`, \`600 mm\`. A formula has names and + - * / between measures, with brackets where they are needed, and \`min\`, \`max\`, \`round\`, \`round-down\`, \`round-up\`, \`longest\`.`,
  wrong: stepExample(["long: 24", "long: 20 + (3"]),
  right: stepExample(),
  basis: "the language",
});
