import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const quotesCloseEarly = rule<{ readonly text: string }>({
  name: "quotes-close-early",
  severity: "error",
  message: () => "the quotes close before the end of the text",
  label: () => "behind the quotes",
  help: (a) => `put quotes around the whole text, or around nothing: \`${shorten(a.text)}\``,
  explain:
    "Where a value begins with a quotation mark it ends with the next one. Measures such as `2' 6\"` need no quotes.",
  wrong: stepExample(["title: Step for", 'title: "Step" for']),
  right: stepExample(),
  basis: "the language",
});
