import { rule } from "../finding.ts";
import { mortisesMeet } from "./mortises-meet.ts";

const withAllow = (source: string): string =>
  source.replace("joints:", 'allow:\n  - { finding: mortises-meet, because: "It is only a model." }\njoints:');

export const errorNotAccepted = rule<{ readonly finding: string }>({
  name: "error-not-accepted",
  severity: "error",
  message: (a) => `\`${a.finding}\` is an error, and cannot be accepted`,
  help: () => "mend what it says, and take this out",
  explain:
    "`allow` accepts warnings and advice. An error is something that cannot be built, or that breaks; no reason changes that.",
  wrong: withAllow(mortisesMeet.wrong),
  right: mortisesMeet.right,
  basis: "the language",
});
