import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const tooMuch = rule<{ readonly count: number; readonly limit: number; readonly of: string }>({
  name: "too-much",
  severity: "error",
  message: (a) => `the limit is ${a.limit} ${a.of}, and here are ${a.count} or more`,
  label: () => "the limit is passed here",
  help: () => "split the piece into several plans, or look for a copy that went wrong",
  explain:
    "Every plan has limits, far above what furniture needs. They keep a damaged or hostile file from using up the machine. `boardwright explain limits` lists them.",
  wrong: `ten: &ten [a, b, c, d, e, f, g, h, i, j]\nhundred: &hundred [${"*ten, ".repeat(10)}]\nthousand: &thousand [${"*hundred, ".repeat(10)}]\nlots: &lots [${"*thousand, ".repeat(10)}]\nmore: [${"*lots, ".repeat(10)}]\n${stepExample()}`,
  right: stepExample(),
  basis: "the program",
});
