import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const yamlProblem = rule<{ readonly reason: string; readonly help?: string }>({
  name: "yaml-problem",
  severity: "error",
  message: (a) => `this line cannot be read: ${a.reason}`,
  label: () => "cannot be read",
  help: (a) => a.help ?? "compare it with the lines around it",
  explain:
    "The source is written in YAML: settings as `name: value`, one to a line, what belongs together further in by the same number of blanks. Something here is written in another way. Compare the line with the ones around it.",
  wrong: stepExample(["title: Step for", "title: &one &two Step for"]),
  right: stepExample(),
  basis: "the language",
});
