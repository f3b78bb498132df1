import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const unusableName = rule<{ readonly name: string }>({
  name: "unusable-name",
  severity: "error",
  message: (a) => `\`${shorten(a.name)}\` cannot be used as a name`,
  label: () => "letters, digits and hyphens",
  help: () => "begin with a letter, and use letters, digits, hyphens and blanks",
  explain: "A name has to be usable in formulas, where signs such as + and . mean something else.",
  wrong: stepExample(["  left-leg: {", "  leg+foot: { like: left-leg, right: 12 }\n  left-leg: {"]),
  right: stepExample(),
  basis: "the language",
});
