import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const nestedTooDeep = rule<{ readonly limit: number }>({
  name: "nested-too-deep",
  severity: "error",
  message: (a) => `this is nested more than ${a.limit} levels deep`,
  label: () => "one level too many",
  help: () => "look for a bracket that is not closed",
  explain:
    "Groups in groups are fine, but no piece of furniture needs this many levels. Most often brackets were opened and not closed.",
  wrong: `deep: ${"[".repeat(70)}${"]".repeat(70)}\n${stepExample()}`,
  right: stepExample(),
  basis: "the program",
});
