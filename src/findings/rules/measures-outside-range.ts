import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const measuresOutsideRange = rule<{
  readonly thickness: Length;
  readonly low: Length;
  readonly high: Length;
  readonly units: PrintOptions["units"];
}>({
  name: "measures-outside-range",
  severity: "error",
  message: (a) => {
    const say = (length: Length): string => sayLength(length, { units: a.units });
    return `the plan is drawn for ${say(a.thickness)}, which is not between ${say(a.low)} and ${say(a.high)}`;
  },
  label: () => "the plan's own thickness is left out",
  help: () => "make the range wide enough to hold what the stock measures",
  explain:
    "`between` gives the thicknesses that the plan promises to survive. The one that it is drawn for must be among them.",
  wrong: stepExample(["sold as: 2x4", "sold as: 2x4, between: 1 5/8 and 1 3/4"]),
  right: stepExample(["sold as: 2x4", "sold as: 2x4, between: 1 3/8 and 1 1/2"]),
  basis: "the language",
});
