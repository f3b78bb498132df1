import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const includeNotFound = rule<{ readonly file: string; readonly outside: boolean }>({
  name: "include-not-found",
  severity: "error",
  message: (a) =>
    a.outside
      ? `\`${shorten(a.file)}\` cannot be included: it is not the name of a YAML file in the folder of the plan`
      : `the file ${a.file} is not there, or is no plan file`,
  label: () => "included here",
  help: (a) =>
    a.outside
      ? "put the file beside the plan, and write its name alone"
      : "put it beside the plan, or take the line out",
  explain: `A plan may include other YAML files of its own folder, by their names alone. Their tables of assemblies, stock, hardware, sizes and choices are added to those of the plan.`,
  wrong: stepExample(["units: inch", "units: inch\ninclude: woods.yaml"]),
  right: stepExample(),
  basis: "the language",
});
