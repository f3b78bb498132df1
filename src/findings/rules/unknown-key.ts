import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const unknownKey = rule<{
  readonly what: string;
  readonly key: string;
  readonly near: readonly string[];
  readonly known: readonly string[];
  readonly belongs: readonly string[];
}>({
  name: "unknown-key",
  severity: "error",
  message: (a) => `${a.what} has no setting called \`${shorten(a.key)}\``,
  label: () => "not known here",
  why: (a) =>
    a.near.length === 0 && a.belongs.length > 0
      ? `\`${shorten(a.key)}\` belongs to ${a.belongs.slice(0, 3).join(" or ")}.`
      : undefined,
  help: (a) => (a.near.length > 0 ? `write ${orList(a.near)}` : `${a.what} may have: ${a.known.join(", ")}`),
  explain:
    "Each thing in a plan has its own settings. A word that is not one of them is most often misspelt, or stands a level too far out or in.",
  wrong: stepExample(["wood: spruce", "wod: spruce"]),
  right: stepExample(),
  basis: "the language",
});
