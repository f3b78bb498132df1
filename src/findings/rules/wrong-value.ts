import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const wrongValue = rule<{ readonly key: string; readonly wanted: string; readonly found: string }>({
  name: "wrong-value",
  severity: "error",
  message: (a) =>
    `${a.key.startsWith("the ") ? a.key : `\`${shorten(a.key)}\``} should be ${a.wanted}, and is ${a.found}`,
  label: (a) => a.found,
  help: (a) => `write ${a.wanted}`,
  explain: "Each setting wants its own kind of value: a measure, a text, a list, settings of its own.",
  wrong: stepExample(["with: screws }", "with: [screws] }"]),
  right: stepExample(),
  basis: "the language",
});
