import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const bracketNotClosed = rule<{ readonly bracket: string; readonly closing: string }>({
  name: "bracket-not-closed",
  severity: "error",
  message: (a) => `a bracket ${a.bracket} is opened and not closed`,
  label: () => "opened here",
  help: (a) => `write ${a.closing} where it ends, and keep lines between further in than the first`,
  explain:
    "What stands in brackets ends with its own bracket. It may go on over several lines, if they stand further in than the line where it began.",
  wrong: stepExample(["right-leg: { like: left-leg, right: long }", "right-leg: { like: left-leg, right: long"]),
  right: stepExample(),
  basis: "the language",
});
