import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const measuredStockUnknown = rule<{
  readonly name: string;
  readonly known: readonly string[];
  readonly nearest: readonly string[];
}>({
  name: "measured-stock-unknown",
  severity: "error",
  message: (a) => `the plan has no stock called ${a.name} that could measure anything`,
  help: (a) => (a.nearest.length > 0 ? `write ${a.nearest.join(" or ")}` : `stock of this plan: ${a.known.join(", ")}`),
  explain: `\`--measured stock=thickness\` draws the plan for the stock that you have: one of the names in \`stock\`, and what it measures, such as \`ply=0.703\`, \`ply=17.9 mm\`, or \`ply="7.03 for 10"\` for a stack of ten pieces.`,
  wrong: stepExample(),
  wrongMeasured: [["lumbr", "1 7/16"]],
  right: stepExample(),
  basis: "the language",
});
