import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const assemblyCircle = rule<{ readonly names: readonly string[] }>({
  name: "assembly-circle",
  severity: "error",
  message: (a) => `an assembly cannot be made of itself: ${a.names.join(" → ")}`,
  label: () => "leads back to itself",
  help: () => "take it out of its own definition",
  explain: `An assembly of the plan may be made of other assemblies, but not, by any way round, of itself.`,
  wrong: stepExample([
    "piece:",
    "assemblies:\n  post:\n    piece:\n      inner: { kind: post }\npiece:\n  extra: { kind: post }",
  ]),
  right: stepExample([
    "piece:",
    "assemblies:\n  post:\n    piece:\n      inner: { kind: space, left: 0, right: 1, front: 0, back: 1, bottom: 0, top: 1 }\npiece:\n  extra: { kind: post }",
  ]),
  basis: "the language",
});
