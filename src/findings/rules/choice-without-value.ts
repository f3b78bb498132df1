import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const choiceWithoutValue = rule<{ readonly choice: string; readonly option: string }>({
  name: "choice-without-value",
  severity: "error",
  message: (a) => `nothing is said here for \`${a.choice}\` when it is ${a.option}`,
  label: () => "no value for this option",
  help: (a) => `add \`${a.option}:\` and what it shall be then`,
  explain: `Settings with \`by\` give a value for each option of a choice.`,
  wrong: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    ["wood: spruce", "wood: { by: wood, pine: pine }"],
  ),
  right: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    ["wood: spruce", "wood: { by: wood, spruce: spruce, pine: pine }"],
  ),
  basis: "the language",
});
