import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const screwSizeUnknown = rule<{ readonly sold: readonly string[]; readonly metric: boolean }>({
  name: "screw-size-unknown",
  severity: "error",
  message: (a) => `screws are sold as ${a.sold.join(", ")}`,
  help: (a) => (a.metric ? "write one of these diameters" : "write one of these gauges"),
  explain: `The size decides the clearance hole, the pilot and the head. In a plan in inches give the gauge, in a metric one the diameter.`,
  wrong: stepExample(["with: screws", "with: screws, screw: { gauge: 7, length: 3 }"]),
  right: stepExample(),
  basis: "common practice, no source",
});
