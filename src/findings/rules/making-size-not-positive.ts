import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

export const makingSizeNotPositive = rule<{ readonly what: string }>({
  name: "making-size-not-positive",
  severity: "error",
  message: (a) => `${a.what} comes to nothing, or to less than nothing`,
  label: () => "not above zero",
  help: () => "write a measure above zero",
  explain:
    "Bands have a thickness, and what is left over a size is above zero: a part cannot be cut under its size and come out right.",
  wrong: shelfExample(["bottom: 4 }", "bottom: 4, cut: over by 0 }"]),
  right: shelfExample(["bottom: 4 }", "bottom: 4, cut: over by 1/16 }"]),
  basis: "the language",
});
