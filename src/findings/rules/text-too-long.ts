import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const textTooLong = rule<{ readonly count: number; readonly limit: number }>({
  name: "text-too-long",
  severity: "error",
  message: (a) => `this text has ${a.count} characters, and ${a.limit} are the limit`,
  label: () => "begins here",
  help: () => "make it shorter",
  explain:
    "A formula of more than a few lines cannot be read by anybody; take it apart and give the pieces names under `sizes`. Other texts may be longer.",
  wrong: stepExample(["long: 24", `long: 24${" + 0".repeat(150)}`]),
  right: stepExample(),
  basis: "the program",
});
