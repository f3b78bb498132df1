import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const emptyValue = rule<{ readonly key: string; readonly comment: string | undefined }>({
  name: "empty-value",
  severity: "error",
  message: (a) => `nothing stands behind \`${a.key}:\``,
  label: () => "has no value",
  why: (a) => (a.comment === undefined ? undefined : "A # begins a comment, which is for people only."),
  help: (a) =>
    a.comment === undefined
      ? "write a value, or take the line out"
      : `put quotes around it: \`${a.key}: "${shorten(a.comment)}"\``,
  explain:
    "A setting needs a value behind its colon, or lines below it that stand further in. What follows ` #` is a comment and does not count.",
  wrong: stepExample(["units: inch", "units:"]),
  right: stepExample(),
  basis: "the language",
});
