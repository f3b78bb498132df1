import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const stopNotAlongHousing = rule<{
  readonly join: string;
  readonly from: string;
  readonly ends: readonly [string, string];
}>({
  name: "stop-not-along-housing",
  severity: "error",
  message: (a) =>
    `the housing for ${a.join} runs from ${a.ends[0]} to ${a.ends[1]}, and cannot be stopped from ${a.from}`,
  help: (a) => `write how far it is stopped from ${a.ends[0]} or from ${a.ends[1]}`,
  explain: `A sliding dovetail goes in along its housing. It can be stopped at one end of the housing, and goes in from the other.`,
  wrong: stepExample(
    ["with: screws", "with: sliding dovetail, deep: 1/2, stopped: 1/2 from left"],
    ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
  ),
  right: stepExample(
    ["with: screws", "with: sliding dovetail, deep: 1/2, stopped: 1/2 from front"],
    ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
  ),
  basis: "this version",
});
