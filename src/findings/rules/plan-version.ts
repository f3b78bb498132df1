import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const planVersion = rule<{ readonly found: string }>({
  name: "plan-version",
  severity: "error",
  message: (a) => `this plan is written in version ${shorten(a.found)} of the language`,
  label: () => "only 1 is read",
  help: () => "write `plan: 1`, or use a newer program",
  explain:
    "`plan: 1` says which version of the language the plan is written in, so that it means the same in later years.",
  wrong: stepExample(["plan: 1", "plan: 2"]),
  right: stepExample(),
  basis: "the language",
});
