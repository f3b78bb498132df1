import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const characterNotInType = rule<{ readonly what: string; readonly characters: readonly string[] }>({
  name: "character-not-in-type",
  severity: "warning",
  message: (a) =>
    `${a.what} has ${a.characters.length === 1 ? "a character" : "characters"} that cannot be printed: ${a.characters
      .slice(0, 8)
      .map((c) => `\`${c}\` (U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")})`)
      .join(", ")}`,
  label: () => "not in the typeface",
  why: () =>
    "The plan's typeface has Latin letters with their accents, figures and signs. A □ stands for what it lacks.",
  help: () => "write it with other letters",
  explain:
    "Plans are printed in a typeface that comes with the program, so that they look the same everywhere. It has the letters of the languages that are written with the Latin alphabet. Other scripts and pictures are printed as □.",
  wrong: stepExample(["title: Step", "title: 台 Step"]),
  right: stepExample(),
  basis: "the typeface",
});
