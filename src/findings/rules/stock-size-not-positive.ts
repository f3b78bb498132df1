import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const stockSizeNotPositive = rule<{ readonly what: string }>({
  name: "stock-size-not-positive",
  severity: "error",
  message: (a) => `${a.what} comes to nothing, or to less than nothing`,
  label: () => "not above zero",
  help: () => "write a measure above zero",
  explain: "Thickness, width and length of what is bought are above zero.",
  wrong: stepExample(["sold as: 2x4", "sold as: 2x4, measures: { thick: 1 1/2 - 2, wide: 3 1/2 }"]),
  right: stepExample(["sold as: 2x4", "sold as: 2x4, measures: { thick: 1 1/2, wide: 3 1/2 }"]),
  basis: "the language",
});
