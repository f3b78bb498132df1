import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const moreThanOneDocument = rule<Record<string, never>>({
  name: "more-than-one-document",
  severity: "error",
  message: () => "a second document begins here",
  label: () => "begins here",
  help: () => "put it into a file of its own",
  explain: "A line of three dashes begins a new document. One file holds one piece of furniture.",
  wrong: `${stepExample()}---\n${stepExample()}`,
  right: stepExample(),
  basis: "the language",
});
