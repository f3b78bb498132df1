import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const textWithColon = rule<{ readonly key: string; readonly text: string }>({
  name: "text-with-colon",
  severity: "error",
  message: (a) => `the text of \`${shorten(a.key)}\` has a colon in it`,
  label: () => "a second colon",
  help: (a) => `put quotes around the text: \`${shorten(a.key)}: "${shorten(a.text)}"\``,
  explain: "A colon and a blank part a name from its value. A text that has them itself needs quotes.",
  wrong: stepExample(["title: Step for", "title: Step: for"]),
  right: stepExample(),
  basis: "the language",
});
