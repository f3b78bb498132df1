import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const bumper = (across: string): string =>
  stepExample(["joints:", `fittings:\n  - { fit: bumper, to: tread, face: bottom, across: ${across} }\njoints:`]);

export const hardwareOffItsPart = rule<{ readonly item: string; readonly part: string; readonly by: string }>({
  name: "hardware-off-its-part",
  severity: "error",
  message: (a) => `the ${a.item} lies beside ${a.part}, not on it: ${a.by} away`,
  label: () => "no wood to fix it to here",
  help: (a) => `give it a place (across, deep or up) on ${a.part}, or name the part that is there`,
  explain: "What is fixed to a part lies on it; beside it there is nothing to hold it.",
  wrong: bumper("30"),
  right: bumper("12"),
  basis: "geometry",
});
