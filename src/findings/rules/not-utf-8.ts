import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const notUtf8 = rule<Record<string, never>>({
  name: "not-utf-8",
  severity: "error",
  message: () => "the file has bytes that are no text in UTF-8",
  label: () => "here",
  help: () => "save the file as UTF-8",
  explain:
    "A plan is a text file in UTF-8, which every editor can write. Bytes of another encoding turn into wrong letters, or into the sign � when another program has already guessed.",
  wrong: stepExample(["title: Step", "title: St�p"]),
  right: stepExample(),
  basis: "the language",
});
