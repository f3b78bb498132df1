import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const needsQuotes = rule<{ readonly sign: string }>({
  name: "needs-quotes",
  severity: "error",
  message: (a) => `a text cannot begin with ${a.sign} unless it is in quotes`,
  label: () => "has a meaning of its own",
  help: () => "put quotes around the text",
  explain: "Some signs mean something at the beginning of a value. In quotes they are text.",
  wrong: stepExample(["title: Step", "title: @Step"]),
  right: stepExample(),
  basis: "the language",
});
