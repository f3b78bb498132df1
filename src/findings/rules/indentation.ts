import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const indentation = rule<Record<string, never>>({
  name: "indentation",
  severity: "error",
  message: () => "this line stands neither under the line above nor beside it",
  label: () => "begins at another column",
  help: () => "begin it at the same column as the lines it belongs with",
  explain:
    "What belongs together begins at the same column, and what belongs to a line stands further in below it. A line whose value stands behind its colon can have nothing below it.",
  wrong: stepExample(["  left-leg:", "   left-leg:"]),
  right: stepExample(),
  basis: "the language",
});
