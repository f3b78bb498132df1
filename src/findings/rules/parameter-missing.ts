import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const parameterMissing = rule<{ readonly assembly: string; readonly parameter: string }>({
  name: "parameter-missing",
  severity: "error",
  message: (a) => `\`${a.assembly}\` needs \`${a.parameter}\``,
  label: () => "not given",
  help: (a) => `add \`${a.parameter}:\` here`,
  explain: `An assembly of the plan says with \`needed\` which of its parameters have to be given.`,
  wrong: stepExample([
    "piece:",
    "assemblies:\n  gap:\n    parameters: { wide: needed }\n    piece: {}\npiece:\n  extra: { kind: gap }",
  ]),
  right: stepExample([
    "piece:",
    "assemblies:\n  gap:\n    parameters: { wide: needed }\n    piece: {}\npiece:\n  extra: { kind: gap, wide: 3 }",
  ]),
  basis: "the language",
});
