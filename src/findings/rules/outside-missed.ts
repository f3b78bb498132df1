import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const outsideMissed = rule<{
  readonly face: string;
  readonly direction: string;
  readonly by: string;
  readonly short: boolean;
}>({
  name: "outside-missed",
  severity: "warning",
  message: (a) =>
    a.short
      ? `the parts end ${a.by} short of the ${a.face} of the outside`
      : `the parts reach ${a.by} beyond the ${a.face} of the outside`,
  help: () => "correct the outside, or place the parts from outside.left, outside.top and so on",
  explain: `\`outside\` says how big the piece is over everything. Parts are placed by what is written of them, so the two can disagree; the plan then prints a size that the piece does not have.`,
  wrong: stepExample(["height: 12", "height: 13"]),
  right: stepExample(),
  basis: "the language",
});
