import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const bench = (left: string): string =>
  stepExample(
    ["width: 24", "width: 36"],
    ["long: 24", "long: 36"],
    ["facing: left, left: 0", `facing: left, left: ${left}`],
    ["right: long }\njoints", `right: long - ${left} }\nused for: { seats: 1, each weighs: 150 lb }\njoints`],
  );

export const benchEndTips = rule<{
  readonly end: string;
  readonly overhang: string;
  readonly holds: string;
  readonly limit: string;
  readonly most: string;
}>({
  name: "bench-end-tips",
  severity: "error",
  message: (a) => `somebody of ${a.holds} who sits at the ${a.end} end of the seat tips it over`,
  label: () => "tips",
  why: (a) => `the seat reaches ${a.overhang} past its legs there; it should hold ${a.limit}`,
  help: (a) => `let the seat reach at most ${a.most} past the legs at the ${a.end}, or make it heavier`,
  explain: `A seat that reaches far past its legs is a lever: who sits at its end lifts the other. The weight of the piece works against it from its
middle, that of the sitter from 2 in (50 mm) in from the end of the seat. \`used for\` says that it is sat on.`,
  wrong: bench("10"),
  right: bench("1 1/2"),
  basis: "moments about the legs; 300 lb (136 kg) is common practice, no source",
});
