import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const divisionByZero = rule<Record<string, never>>({
  name: "division-by-zero",
  severity: "error",
  message: () => "this divides by nothing",
  label: () => "this is zero",
  help: () => "write a divisor that is not zero",
  explain: `A number divided by zero has no size. It often comes from a difference that happens to be zero, or from rounding to steps of zero.`,
  wrong: stepExample(["long: 24", "long: 48 / (2 - 2)"]),
  right: stepExample(),
  basis: "the language",
});
