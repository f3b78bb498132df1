import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const hyphenReadAsMeasure = rule<{ readonly text: string; readonly read: string }>({
  name: "hyphen-read-as-measure",
  severity: "advice",
  message: (a) => `${a.text} is read as ${a.read}`,
  label: (a) => `read as ${a.read}`,
  help: (a) => `write \`${a.read}\`, or \`${a.text.replaceAll("-", " - ")}\` for a minus`,
  explain:
    "A hyphen inside a measure that stands alone is read as a blank, as it is often written by hand. Nothing else was changed.",
  wrong: stepExample(["depth: 3 1/2", "depth: 3-1/2"]),
  right: stepExample(),
  basis: "the language",
});
