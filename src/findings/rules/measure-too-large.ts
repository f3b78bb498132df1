import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const measureTooLarge = rule<Record<string, never>>({
  name: "measure-too-large",
  severity: "error",
  message: () => "this comes to more than 100 m",
  help: () => "look for a missing space or unit",
  explain: `No piece of furniture is that large. Most often a unit is missing or two numbers ran together.`,
  wrong: stepExample(["long: 24", "long: 240000"]),
  right: stepExample(),
  basis: "the language",
});
