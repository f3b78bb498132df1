import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const controlCharacter = rule<{ readonly code: string }>({
  name: "control-character",
  severity: "error",
  message: (a) => `the file has an invisible character, U+${a.code}`,
  label: () => "cannot be seen",
  help: () => "delete it, and type the line again if need be",
  explain:
    "Control characters cannot be seen, and some of them change how a line is shown on the screen. They mostly come in by copying from a web page or a word processor.",
  wrong: stepExample(["title: Step", "title: St\u0007ep"]),
  right: stepExample(),
  basis: "the language",
});
