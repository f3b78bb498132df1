import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const keyNotText = rule<Record<string, never>>({
  name: "key-not-text",
  severity: "error",
  message: () => "the name of a setting has to be a word",
  label: () => "not a word",
  help: () => "write `name: value`",
  explain: "Before the colon stands the name of a setting or of a part. Lists and braces can stand only behind it.",
  wrong: stepExample(["units: inch", "units: inch\n[by]: me"]),
  right: stepExample(),
  basis: "the language",
});
