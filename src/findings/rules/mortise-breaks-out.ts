import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const mortiseBreaksOut = rule<{ readonly part: string; readonly deep: string; readonly thick: string }>({
  name: "mortise-breaks-out",
  severity: "error",
  message: (a) => `the mortise would be ${a.deep} deep, and ${a.part} is only ${a.thick} thick there`,
  help: () => "make the tenon shorter, or exactly as long as the other part is thick",
  explain: `A mortise is a little deeper than its tenon is long, so that the shoulder closes. It has to stop before the far side, unless the tenon goes right through (its length equal to the thickness).`,
  wrong: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon, tenon: { long: 1 15/32 }",
  ]),
  right: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon, tenon: { long: 1 }",
  ]),
  basis: "the language",
});
