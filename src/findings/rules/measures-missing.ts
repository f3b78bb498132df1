import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const measuresMissing = rule<{ readonly stock: string }>({
  name: "measures-missing",
  severity: "error",
  message: (a) => `\`${a.stock}\` does not say how thick it is`,
  label: () => "no thickness",
  help: () => "add `measures: 3/4`, or `sold as:` with a size in it, such as `2x4` or `3/4 birch plywood`",
  explain:
    "A stock needs a thickness: what it is planed to, what it measures, or words of the shop that the catalogue knows.",
  wrong: stepExample(["{ sold as: 2x4, wood: spruce }", "{ wood: spruce }"]),
  right: stepExample(),
  basis: "the language",
});
