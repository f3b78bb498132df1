import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const tabIndent = rule<Record<string, never>>({
  name: "tab-indent",
  severity: "error",
  message: () => "this line begins with a tab",
  label: () => "a tab",
  help: () => "use blanks, as many as the lines beside it",
  explain:
    "Blanks at the beginning of a line show what belongs to what. A tab has no fixed width, so YAML does not allow it there. Most editors can be set to write blanks for the tab key.",
  wrong: stepExample(["  long: 24", "\tlong: 24"]),
  right: stepExample(),
  basis: "the language",
});
