import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const unitsDoubtful = rule<{
  /** The largest size of the outside, as it was written. */
  readonly size: string;
  readonly units: "inch" | "mm";
  /** Whether the plan says its units itself. */
  readonly said: boolean;
}>({
  name: "units-doubtful",
  severity: "error",
  message: (a) =>
    `the largest size of the outside is ${a.size} ${a.units === "inch" ? "in" : "mm"}: that looks like ${a.units === "inch" ? "millimetres" : "inches"}`,
  label: (a) => (a.units === "inch" ? "inches here" : "millimetres here"),
  help: (a) => {
    const [other, unit] = a.units === "inch" ? ["mm", "in"] : ["inch", "mm"];
    return `${a.said ? `write \`units: ${other}\`` : `write \`units: ${other}\` above it, since inches are taken if nothing is said`}; if it really is so ${a.units === "inch" ? "large" : "small"}, write the unit with it: \`${a.size} ${unit}\``;
  },
  explain: `Numbers without a unit are in the plan's \`units\`: inches if nothing is said. Furniture that is less than 100 mm at its largest, or more than 240 in, was most likely meant in the other unit, and everything that would be told of it follows from that.`,
  wrong: stepExample(["units: inch", "units: mm"]),
  right: stepExample(),
  basis: "common practice, no source",
});
