import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const notMarkedExactly = rule<{
  readonly part: string;
  readonly size: string;
  readonly exact: string;
  readonly printed: string;
}>({
  name: "not-marked-exactly",
  severity: "advice",
  message: (a) => `the ${a.size} of ${a.part} is ${a.exact}, printed as ${a.printed}`,
  help: () => "choose sizes that fall on a mark, or a finer precision",
  explain: `The plan asks the reader to mark no finer than its \`precision\`. Sizes that fall between two marks are printed to the nearest; what goes into something is rounded down.`,
  wrong: stepExample(["long: 24", "long: 24 1/100"], ["width: 24", "width: 24 1/100"]),
  right: stepExample(),
  basis: "the language",
});
