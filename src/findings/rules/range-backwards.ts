import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const rangeBackwards = rule<{ readonly key: string }>({
  name: "range-backwards",
  severity: "error",
  message: (a) => `\`${a.key}\` begins with the larger measure`,
  label: () => "large, then small",
  help: () => "write the smaller measure first",
  explain: "A range is written from its smaller end to its larger: `widths: 5 to 8`, `between: 11/16 and 3/4`.",
  wrong: stepExample(["sold as: 2x4", "sold as: 2x4, between: 1 1/2 and 1 3/8"]),
  right: stepExample(["sold as: 2x4", "sold as: 2x4, between: 1 3/8 and 1 1/2"]),
  basis: "the language",
});
