import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const lineWithoutColon = rule<{ readonly text: string }>({
  name: "line-without-colon",
  severity: "error",
  message: (a) => `there is no colon in \`${shorten(a.text)}\``,
  label: () => "name or value?",
  help: (a) => `write \`${shorten(a.text)}: …\`, or put it further in if it goes on from the line above`,
  explain:
    "Every line has the name of a setting or of a part, a colon and a value, unless it goes on from the line above.",
  wrong: stepExample(["units: inch", "units inch"]),
  right: stepExample(),
  basis: "the language",
});
