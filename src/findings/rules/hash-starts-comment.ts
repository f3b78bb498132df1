import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const hashStartsComment = rule<{ readonly text: string }>({
  name: "hash-starts-comment",
  severity: "warning",
  message: () => `the plan does not see \`#\` and what follows it`,
  label: () => "taken as a comment",
  help: (a) => `for a text with a # in it use quotes: \`"${shorten(a.text)}"\`; for a comment put a blank behind the #`,
  explain:
    "A blank and a # begin a comment. Where a word or number follows the # at once it may have been meant as part of the text, as in *screw #8*.",
  wrong: stepExample(["Step for the tool shelves", "Step for the tool shelves #2"]),
  right: stepExample(),
  basis: "the language",
});
