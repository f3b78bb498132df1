import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const lapDoesNotLap = rule<{ readonly join: string; readonly to: string }>({
  name: "lap-does-not-lap",
  severity: "error",
  message: (a) => `${a.join} and ${a.to} do not cross in one plane`,
  help: () => "place both flush on their two broad sides, and let them overlap",
  explain: `For a half lap both parts run through each other: the same thickness, at the same place. Each then loses half of it where they cross.`,
  wrong: stepExample(["with: screws", "with: half lap"]),
  right: stepExample(),
  basis: "the language",
});
