import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const emptySource = rule<Record<string, never>>({
  name: "empty-source",
  severity: "error",
  message: () => "the file is empty",
  help: () => "write a plan, or begin with one of the examples",
  explain: "There is nothing in the file, or only comments.",
  wrong: "# a bench, one day\n",
  right: stepExample(),
  basis: "the language",
});
