import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const bareWordInBraces = rule<{ readonly word: string }>({
  name: "bare-word-in-braces",
  severity: "error",
  message: (a) => `\`${shorten(a.word)}\` stands in the braces without a value`,
  label: () => "no colon behind it",
  help: (a) => `write \`${shorten(a.word)}: …\``,
  explain: "In braces every entry is `name: value`, and commas part the entries.",
  wrong: stepExample(["{ sold as: 2x4, wood", "{ 2x4, wood"]),
  right: stepExample(),
  basis: "the language",
});
