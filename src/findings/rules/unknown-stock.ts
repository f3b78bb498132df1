import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const unknownStock = rule<{
  readonly name: string;
  readonly nearest: readonly string[];
  readonly known: readonly string[];
}>({
  name: "unknown-stock",
  severity: "error",
  message: (a) => `no stock is called ${a.name}`,
  label: () => "not in stock",
  help: (a) =>
    a.nearest.length > 0 ? `write ${a.nearest.join(" or ")}` : `write one of ${a.known.join(", ")}, or add it to stock`,
  explain: `\`made of:\` names an entry of \`stock:\`, which says what the wood is sold as and what it measures.`,
  wrong: stepExample(["tread: { made of: lumber", "tread: { made of: limber"]),
  right: stepExample(),
  basis: "the language",
});
