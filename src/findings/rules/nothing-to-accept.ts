import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const withAllow = (of: string): string =>
  stepExample([
    "joints:",
    `carries: 500 lb\nallow:\n  - { finding: shelf-sags, of: ${of}, because: "It is only a model." }\njoints:`,
  ]);

export const nothingToAccept = rule<{
  readonly finding: string;
  readonly of: string | null;
  /** What the checks found otherwise. */
  readonly near: readonly string[];
}>({
  name: "nothing-to-accept",
  severity: "warning",
  message: (a) =>
    `no check gives \`${a.finding}\`${a.of === null ? "" : ` about ${a.of}`}, so there is nothing to accept`,
  help: (a) =>
    a.near.length > 0 ? `write ${a.near.map((name) => `\`${name}\``).join(" or ")}, or take it out` : "take it out",
  explain:
    "`allow` accepts what a check of the solved piece found, by its name and, if you like, for one part or stock. An entry that accepts nothing hides a slip of the pen, or a mistake that has been mended since.",
  wrong: withAllow("left-leg"),
  right: withAllow("tread"),
  basis: "the language",
});
