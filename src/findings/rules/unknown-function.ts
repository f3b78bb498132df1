import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownFunction = rule<{ readonly name: string; readonly near: readonly string[] }>({
  name: "unknown-function",
  severity: "error",
  message: (a) => `nothing called \`${shorten(a.name)}\` can be worked out`,
  label: () => "not known",
  help: (a) =>
    a.near.length > 0
      ? `write ${orList(a.near)}`
      : "use min, max, round, round-down, round-up or longest; to multiply write *",
  explain:
    "Formulas know `min`, `max`, `round`, `round-down`, `round-up` and `longest`. A name before a bracket is taken as one of these.",
  wrong: stepExample(["long: 24", "long: smallest(24, 25)"]),
  right: stepExample(),
  basis: "the language",
});
