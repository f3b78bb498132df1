import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const wedgesNeedThrough = rule<{ readonly part: string; readonly long: string; readonly thick: string }>({
  name: "wedges-need-through",
  severity: "error",
  message: (a) =>
    `the tenon of ${a.part} is ${a.long} long and ends inside wood ${a.thick} thick, so it cannot be wedged`,
  help: () => "write `with: through tenon`, or leave the wedges out",
  explain: `Wedges are driven into the end of a tenon where it comes out on the far side, and are trimmed flush there.`,
  wrong: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: mortise and tenon, tenon: { wedges: yes }",
  ]),
  right: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: through tenon, tenon: { wedges: yes }",
  ]),
  basis: "geometry",
});
