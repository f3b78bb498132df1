import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const countNotWhole = rule<{ readonly value: number; readonly most: number }>({
  name: "count-not-whole",
  severity: "error",
  message: (a) => `a count has to be a whole number from 1 to ${a.most}, and this comes to ${a.value}`,
  help: () => "write a whole number, or round it, as in round-down(7 / 2, 1)",
  explain: `The number of copies is counted out before anything is placed. Use \`round-down\` or \`round-up\` where a count is worked out from a size.`,
  wrong: stepExample(["bottom: 0, under: tread }", "bottom: 0, under: tread, count: 3 / 2, every: 6 }"]),
  right: stepExample(),
  basis: "the language",
});
