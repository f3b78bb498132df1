import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const kindsDoNotMix = rule<{ readonly operator: string; readonly left: string; readonly right: string }>({
  name: "kinds-do-not-mix",
  severity: "error",
  message: (a) => `${a.left} and ${a.right} do not go together with ${a.operator}`,
  help: (a) =>
    a.operator === "+" || a.operator === "-"
      ? "multiply the plain number by a measure first"
      : "write a measure on one side and a plain number on the other",
  explain: `Measures can be added to measures and multiplied by plain numbers. A measure plus a plain number that has a name, or an area plus a measure, has no meaning. A number written beside a measure needs no unit: \`width - 3/4\` takes 3/4 of the plan's unit.`,
  wrong: stepExample(
    ["long: 24", "long: 24\n  pieces: long / 8 in\n  more: long + pieces"],
    ["right: long, front", "right: more, front"],
  ),
  right: stepExample(),
  basis: "the language",
});
