import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const stockMissing = rule<{ readonly name: string; readonly known: readonly string[] }>({
  name: "stock-missing",
  severity: "error",
  message: (a) => `nothing says what ${a.name} is made of`,
  label: () => "needs made of",
  help: (a) => `add made of: ${a.known[0] ?? "the name of a stock"}`,
  explain: `The stock of a part gives its thickness, its weight and what has to be bought.`,
  wrong: stepExample(["tread: { made of: lumber, ", "tread: { "]),
  right: stepExample(),
  basis: "the language",
});
