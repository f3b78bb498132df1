import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const missingKey = rule<{
  readonly what: string;
  readonly key: string;
  readonly value?: string;
  readonly or?: string;
}>({
  name: "missing-key",
  severity: "error",
  message: (a) => `${a.what} needs \`${a.key}\``,
  label: (a) => `needs \`${a.key}\``,
  help: (a) => `write \`${a.key}: ${a.value ?? "…"}\` here${a.or ? `, or ${a.or}` : ""}`,
  explain: "Something cannot be worked out unless the plan says it.",
  wrong: stepExample(["title: Step for the tool shelves\n", ""]),
  right: stepExample(),
  basis: "the language",
});
