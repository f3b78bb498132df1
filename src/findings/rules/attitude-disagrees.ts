import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const quoted = (words: readonly string[], between: string): string => words.map((word) => `\`${word}\``).join(between);

export const attitudeDisagrees = rule<{ readonly name: string; readonly words: readonly string[] }>({
  name: "attitude-disagrees",
  severity: "error",
  message: (a) => `${a.name} cannot lie as ${quoted(a.words, " and ")} say together`,
  label: () => "lies in no such way",
  help: (a) => `leave one of ${quoted(a.words, ", ")} out, or change it`,
  explain: `\`as\`, \`facing\` and \`grain\` tell which way a board lies. The broad side looks across the thickness and the grain runs along the length, so the grain cannot run the way that the broad side looks; a board lying flat cannot have its grain up, and so on.`,
  wrong: stepExample(["as: lying flat, left: 0", "as: lying flat, grain: up, left: 0"]),
  right: stepExample(),
  basis: "the language",
});
