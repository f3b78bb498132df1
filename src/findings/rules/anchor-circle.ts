import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const anchorCircle = rule<{ readonly name: string }>({
  name: "anchor-circle",
  severity: "error",
  message: (a) => `\`*${a.name}\` stands inside what \`&${a.name}\` names`,
  label: () => "comes back to where it began",
  help: () => "write out what is meant here",
  explain:
    "`&name` gives a value a name, and `*name` uses the value again. Used inside itself it would go on for ever.",
  wrong: stepExample(["outside: {", "outside: &all { again: *all,"]),
  right: stepExample(),
  basis: "the language",
});
