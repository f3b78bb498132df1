import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownAnchor = rule<{ readonly name: string; readonly near: readonly string[] }>({
  name: "unknown-anchor",
  severity: "error",
  message: (a) => `nothing above this line is named \`&${shorten(a.name)}\``,
  label: () => "named nowhere",
  help: (a) =>
    a.near.length === 0
      ? `write \`&${shorten(a.name)}\` before the value that is meant`
      : `write ${orList(a.near.map((name) => `*${name}`))}`,
  explain:
    "`*name` uses a value again that was given the name `&name` further up. For a text that begins with a star, use quotes.",
  wrong: stepExample(["with: screws", "with: *method"]),
  right: stepExample(),
  basis: "the language",
});
