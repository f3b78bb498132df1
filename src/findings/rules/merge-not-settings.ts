import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const mergeNotSettings = rule<Record<string, never>>({
  name: "merge-not-settings",
  severity: "error",
  message: () => "`<<` takes in settings, and this is something else",
  label: () => "not settings",
  help: () => "write `<<: *name`, where `&name` stands before settings",
  explain:
    "`<<: *name` copies settings that were written further up under `&name`. It needs settings (`name: value`), not a single value.",
  wrong: stepExample(["sizes:\n", "sizes:\n  <<: 24\n"]),
  right: stepExample(),
  basis: "the language",
});
