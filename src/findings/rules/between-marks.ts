import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const betweenMarks = rule<{
  readonly size: Length;
  /** The marks next to it. */
  readonly below: Length;
  readonly above: Length;
  readonly units: PrintOptions["units"];
}>({
  name: "between-marks",
  severity: "advice",
  message: (a) => {
    const [size, below, above] = [a.size, a.below, a.above].map((each) => sayLength(each, { units: a.units }));
    return `${size} lies between two marks of the tape, ${below} and ${above}: what is cut from it is rounded`;
  },
  label: () => "between two marks",
  help: (a) =>
    `write the one that you mean: ${sayLength(a.below, { units: a.units })} or ${sayLength(a.above, { units: a.units })}; or give a finer step under \`precision\` or \`fits\``,
  explain: `The plan asks its reader to mark no finer than its \`precision\`, 1/16 in or 1 mm if nothing is said. What is written between two marks is rounded where a part is cut, and the plan then has another size than was written.`,
  wrong: stepExample(["width: 24", "width: 24 3/5"], ["long: 24", "long: 24 3/5"]),
  right: stepExample(["width: 24", "width: 24 5/8"], ["long: 24", "long: 24 5/8"]),
  basis: "the language",
});
