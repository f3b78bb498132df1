import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const spaceAfterColon = rule<{ readonly key: string; readonly value: string }>({
  name: "space-after-colon",
  severity: "error",
  message: (a) => `a blank is missing behind the colon of \`${shorten(a.key)}\``,
  label: () => "read as one word",
  help: (a) => `write \`${shorten(a.key)}: ${shorten(a.value)}\``,
  explain: "A setting is a name, a colon, a blank and a value. Without the blank the whole is one word.",
  wrong: stepExample(["units: inch", "units:inch"]),
  right: stepExample(),
  basis: "the language",
});
