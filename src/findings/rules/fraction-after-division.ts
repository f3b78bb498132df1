import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const fractionAfterDivision = rule<{ readonly text: string }>({
  name: "fraction-after-division",
  severity: "error",
  message: () => "a fraction behind a division has two readings",
  label: () => "divide by this, or twice?",
  help: () => "put brackets: `12 / (3/4)` or `(12 / 3) / 4`",
  explain:
    "`12 / 3/4` can be meant as twelve divided by three quarters, which is 16, or as twelve divided by three and then by four, which is 1.",
  wrong: stepExample(["long: 24", "long: 24 / 3/4"]),
  right: stepExample(),
  basis: "the language",
});
