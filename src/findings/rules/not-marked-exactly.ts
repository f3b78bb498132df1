import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const notMarkedExactly = rule<{
  readonly part: string;
  readonly exact: string;
  readonly printed: string;
  readonly gap: string;
  readonly other: string;
}>({
  name: "not-marked-exactly",
  severity: "advice",
  message: (a) => `${a.part} is cut to ${a.printed} instead of ${a.exact}, which leaves ${a.gap} open at ${a.other}`,
  label: () => "between two marks of the tape",
  help: () => "choose sizes that fall on a mark, or give a finer step under `fits`",
  explain: `The plan asks the reader to mark no finer than its \`precision\`. A size between two marks is rounded, what goes in between two things down to the finer step of \`fits\` if there is one; every other part then takes its place from the rounded one. What is left over at a joint is less than one step, and is told.`,
  wrong: stepExample(
    ["long: 24", "long: 24 1/100"],
    ["width: 24", "width: 24 1/100"],
    [
      "joints:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\njoints:\n  - { join: rail, to: [left-leg, right-leg], with: screws, from: left-leg }",
    ],
  ),
  right: stepExample(),
  basis: "the language",
});
