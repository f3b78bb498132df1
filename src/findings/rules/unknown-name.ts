import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const unknownName = rule<{ readonly name: string; readonly nearest: readonly string[] }>({
  name: "unknown-name",
  severity: "error",
  message: (a) => `nothing is called ${a.name}`,
  label: () => "not known here",
  help: (a) =>
    a.nearest.length > 0 ? `write ${a.nearest.join(" or ")}` : "add it to sizes, or name a part of the piece",
  explain: `A name in a formula or a place must be a size, \`outside\`, or a part of the piece (with its path, where two parts share a name).`,
  wrong: stepExample(["right: long, front", "right: lang, front"]),
  right: stepExample(),
  basis: "the language",
});
