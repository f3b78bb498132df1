import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const betweenWhich = rule<{
  readonly first: string;
  readonly second: string;
  readonly directions: readonly string[];
}>({
  name: "between-which",
  severity: "error",
  message: (a) =>
    a.directions.length === 0
      ? `there is no space between ${a.first} and ${a.second}`
      : `${a.first} and ${a.second} lie apart in more than one direction: ${a.directions.join(" and ")}`,
  help: (a) =>
    a.directions.length === 0
      ? "name two things with space between them"
      : `write ${a.directions[0]}: between ${a.first} and ${a.second}`,
  explain: `\`between\` acts in the one direction in which the two things lie apart. Where they lie apart in two, the direction has to be named; where they overlap in all three, there is nothing between them.`,
  wrong: stepExample([
    "  right-leg:",
    "  rail: { made of: lumber, as: on edge, between: [tread, tread], front: 0, bottom: 2 }\n  right-leg:",
  ]),
  right: stepExample(),
  basis: "the language",
});
