import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const tenonTooBig = rule<{ readonly part: string; readonly tenon: string; readonly end: string }>({
  name: "tenon-too-big",
  severity: "error",
  message: (a) => `a tenon of ${a.tenon} does not fit the end of ${a.part}, which is ${a.end}`,
  help: () => "make the tenon thinner or the shoulders smaller",
  explain: `The tenon is what is left of the end after the shoulders are cut. Thickness and width of the end less the shoulders must leave something.`,
  wrong: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon, tenon: { thick: 2 }",
  ]),
  right: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon",
  ]),
  basis: "the language",
});
