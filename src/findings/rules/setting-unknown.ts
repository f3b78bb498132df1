import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const settingUnknown = rule<{
  readonly name: string;
  readonly known: readonly string[];
  readonly nearest: readonly string[];
}>({
  name: "setting-unknown",
  severity: "error",
  message: (a) => `the plan has no size called ${a.name} that could be set`,
  help: (a) =>
    a.nearest.length > 0 ? `write ${a.nearest.join(" or ")}` : `sizes that can be set: ${a.known.join(", ")}`,
  explain: `\`--set name=value\` replaces a size of the plan: one of \`sizes\`, or \`width\`, \`depth\`, \`height\` of the outside.`,
  wrong: stepExample(),
  wrongSettings: [["lenght", "30"]],
  right: stepExample(),
  basis: "the language",
});
