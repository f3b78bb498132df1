import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownUnit = rule<{ readonly word: string; readonly near: readonly string[] }>({
  name: "unknown-unit",
  severity: "error",
  message: (a) => `no unit is called \`${shorten(a.word)}\``,
  label: () => "not a unit",
  help: (a) =>
    a.near.length > 0
      ? `write ${orList(a.near)}`
      : "write in, ft, mm, cm or m; between a number and a name put a sign such as *",
  explain:
    "Behind a number may stand `in`, `ft`, `mm`, `cm`, `m` or `deg`, also `\"` and `'`. Without a unit a measure is in the units of the plan.",
  wrong: stepExample(["long: 24", "long: 24 inchs"]),
  right: stepExample(),
  basis: "the language",
});
