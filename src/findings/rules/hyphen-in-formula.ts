import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const hyphenInFormula = rule<{ readonly text: string }>({
  name: "hyphen-in-formula",
  severity: "error",
  message: (a) => `the hyphen in \`${shorten(a.text)}\` has two readings`,
  label: () => "minus, or part of the number?",
  help: (a) =>
    `write \`${shorten(a.text.replaceAll("-", " - "))}\` for a minus${/^\d/.test(a.text) ? `, \`${shorten(a.text.replaceAll("-", " "))}\` for one measure` : ""}`,
  explain:
    "`34-1/2` alone is read as 34 1/2. In a formula it could as well be 34 less 1/2, an inch and a half away. A minus stands between blanks, since names may have hyphens.",
  wrong: stepExample(["long: 24", "long: 20 + 3-1/2"]),
  right: stepExample(),
  basis: "the language",
});
