import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const pinsMeetInDivider = rule<{ readonly part: string; readonly wood: string; readonly least: string }>({
  name: "pins-meet-in-divider",
  severity: "warning",
  message: (a) =>
    `shelf pins from both sides of ${a.part} leave ${a.wood} of wood between their holes, less than ${a.least}`,
  help: () => "set the pins of one shelf further in (in from ends), or put that shelf at another height",
  explain: `Holes from both sides of a divider, opposite each other, meet or nearly meet: the pin of one pushes out that of the other. Rows that stand two diameters apart do not.`,
  wrong: stepExample(),
  right: stepExample(),
  basis: "geometry; common practice, no source",
});
