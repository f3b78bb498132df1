import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownWord = rule<{
  readonly key: string;
  readonly word: string;
  readonly words: readonly string[];
  readonly near: readonly string[];
}>({
  name: "unknown-word",
  severity: "error",
  message: (a) => `\`${a.key}\` cannot be \`${shorten(a.word)}\``,
  label: () => "not one of its words",
  help: (a) => `write ${orList(a.near.length > 0 ? a.near : a.words)}`,
  explain: "This setting takes one of a few words.",
  wrong: stepExample(["units: inch", "units: furlong"]),
  right: stepExample(),
  basis: "the language",
});
