import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const notInThisVersion = rule<{ readonly what: string; readonly help?: string }>({
  name: "not-in-this-version",
  severity: "warning",
  message: (a) => `${a.what} is not in this version`,
  label: () => "not read",
  help: (a) => a.help ?? "the plan is made without it; take it out, or keep it for later",
  explain:
    "The word belongs to the language, and this version of the program does nothing with it yet. It is told, so that nobody relies on it.",
  wrong: stepExample(["sizes:\n", "built: { width: 42 }\nsizes:\n"]),
  right: stepExample(),
  basis: "the language",
});
