import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const assemblyName = rule<{ readonly name: string; readonly kind: string }>({
  name: "assembly-name",
  severity: "error",
  message: (a) => `\`${a.name}\` would be an assembly, and this version has only parts and groups`,
  label: () => "an assembly",
  help: (a) =>
    a.kind === "kind:"
      ? "describe its parts one by one, with `made of` in each"
      : `give the group a name of its own, such as \`my-${a.kind}\``,
  explain:
    "An entry of `piece` with `kind:`, or with the name of a kind (case, door, drawer, frame …) and nothing that it is made of, is an assembly: something that the program turns into parts by itself. This version takes parts and groups of parts only.",
  wrong: stepExample(["  left-leg: {", "  frame:\n    leg: { like: left-leg, right: 12 }\n  left-leg: {"]),
  right: stepExample(),
  basis: "the language",
});
