import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const quotesNotClosed = rule<{ readonly quote: string }>({
  name: "quotes-not-closed",
  severity: "error",
  message: (a) => `a quotation mark ${a.quote} is opened and never closed`,
  label: () => "opened here",
  help: (a) => `write ${a.quote} at the end of the text`,
  explain: "A text that begins with a quotation mark goes on until the next one, over as many lines as there are.",
  wrong: stepExample(["title: Step", 'title: "Step']),
  right: stepExample(),
  basis: "the language",
});
