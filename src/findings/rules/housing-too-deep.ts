import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const housingTooDeep = rule<{ readonly part: string; readonly deep: string; readonly thick: string }>({
  name: "housing-too-deep",
  severity: "error",
  message: (a) => `the housing is ${a.deep} deep, and ${a.part} is only ${a.thick} thick`,
  help: () => "write a depth of a third to a half of the thickness",
  explain: `A dado, rabbet or groove takes a third to a half of the wood. One as deep as the wood would cut the part in two.`,
  wrong: stepExample(
    ["with: screws", "with: dado, deep: 4"],
    ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
  ),
  right: stepExample(
    ["with: screws", "with: dado, deep: 3/8"],
    ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
  ),
  basis: "common practice, no source",
});
