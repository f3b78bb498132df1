import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const commaInBraces = rule<{ readonly key: string; readonly text: string }>({
  name: "comma-in-braces",
  severity: "error",
  message: (a) => `the comma ends the text of \`${a.key}\``,
  label: () => "the text is cut at the comma",
  help: (a) => `put quotes around it: \`${a.key}: "${shorten(a.text)}"\``,
  explain:
    "In braces a comma begins the next entry. A text that has a comma needs quotes there; questions and notes are best written in quotes everywhere.",
  wrong: stepExample(["long: 24", "long: { value: 24, ask: How long is it, all in all? }"]),
  right: stepExample(),
  basis: "the language",
});
