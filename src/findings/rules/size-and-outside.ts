import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const sizeAndOutside = rule<{ readonly name: string }>({
  name: "size-and-outside",
  severity: "error",
  message: (a) => `\`${a.name}\` is both a size and an outside measure`,
  label: () => "the same name",
  help: () => "give the size another name",
  explain: "A reader can change sizes and the outside measures by their names, so a name has to mean one of them.",
  wrong: stepExample(["long: 24", "long: 24\n  width: 24"]),
  right: stepExample(),
  basis: "the language",
});
