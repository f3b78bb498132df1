import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const yamlTag = rule<{ readonly tag: string }>({
  name: "yaml-tag",
  severity: "warning",
  message: (a) => `\`${a.tag}\` says nothing here`,
  label: () => "has no effect",
  help: () => "take it out",
  explain:
    "A word with an exclamation mark before a value tells some programs what kind of value it is. A plan knows that from the setting.",
  wrong: stepExample(["long: 24", "long: !length 24"]),
  right: stepExample(),
  basis: "the language",
});
