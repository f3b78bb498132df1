import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const wrongKind = rule<{ readonly wanted: string; readonly found: string }>({
  name: "wrong-kind",
  severity: "error",
  message: (a) => `${a.wanted} is wanted here, and this is ${a.found}`,
  help: (a) => `write ${a.wanted}`,
  explain: `A size or a position is a measure, a count is a plain number. Multiplying two measures makes an area; dividing one by another makes a plain number.`,
  wrong: stepExample(["right: long, front", "right: long * long, front"]),
  right: stepExample(),
  basis: "the language",
});
