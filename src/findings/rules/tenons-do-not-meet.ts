import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const tenonsDoNotMeet = rule<{
  readonly part: string;
}>({
  name: "tenons-do-not-meet",
  severity: "warning",
  message: (a) => `the tenon of ${a.part} meets no other, so its end need not be mitred`,
  help: () => "leave `ends: mitred` out, or make the tenons long enough to meet",
  explain: `Tenons are mitred where two of them come within 1 mm of each other in one leg. One that ends before that stays square.`,
  wrong: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon, tenon: { ends: mitred }",
  ]),
  right: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon",
  ]),
  basis: "geometry",
});
