import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";
import { orList } from "../suggest.ts";

export const choiceUnknown = rule<{
  readonly name: string;
  /** The choice that has no such option; absent where there is no such choice. */
  readonly of?: string;
  readonly near: readonly string[];
  readonly known: readonly string[];
}>({
  name: "choice-unknown",
  severity: "error",
  message: (a) =>
    a.of === undefined
      ? `the plan has no choice called \`${shorten(a.name)}\``
      : `\`${a.of}\` has no option called \`${shorten(a.name)}\``,
  label: () => "not among the choices",
  help: (a) =>
    a.known.length === 0 ? "add it under `choices`" : `write ${orList(a.near.length > 0 ? a.near : a.known)}`,
  explain: `Under \`choices\` stands what a reader may choose. What refers to one, as \`when: wood is oak\`, as \`{ by: wood, oak: …, pine: … }\` or on the command line, uses the names that stand there.`,
  wrong: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    ["wood: spruce", "wood: { by: wod, spruce: spruce, pine: pine }"],
  ),
  right: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    ["wood: spruce", "wood: { by: wood, spruce: spruce, pine: pine }"],
  ),
  basis: "the language",
});
