import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const yamlVersion = rule<{ readonly version: string }>({
  name: "yaml-version",
  severity: "error",
  message: (a) => `the file asks for YAML ${a.version}`,
  label: () => "only 1.2 is read",
  help: () => "take the line out",
  explain:
    "In the older YAML 1.1 words such as `yes` and numbers such as `012` mean something else. Plans are YAML 1.2, which needs no such line.",
  wrong: `%YAML 1.1\n---\n${stepExample()}`,
  right: stepExample(),
  basis: "the language",
});
