import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const hook = (across: string): string =>
  stepExample([
    "joints:",
    `fittings:\n  - { fit: hook, to: tread, face: bottom, across: 8 }\n  - { fit: hook, to: tread, face: bottom, across: ${across} }\njoints:`,
  ]);

export const hardwareOverlaps = rule<{
  readonly item: string;
  readonly part: string;
  readonly other: string;
  readonly by: string;
}>({
  name: "hardware-overlaps",
  severity: "error",
  message: (a) => `the ${a.item} on ${a.part} and ${a.other} are in the same place: they overlap by ${a.by}`,
  label: () => "no room for it here",
  help: (a) => `say where it goes (across, deep or up), clear of ${a.other}`,
  explain: "What is screwed to a part needs its room beside other parts and other hardware.",
  wrong: hook("8 1/8"),
  right: hook("16"),
  basis: "geometry",
});
