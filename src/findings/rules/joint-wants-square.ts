import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const jointWantsSquare = rule<{ readonly join: string; readonly to: string; readonly method: string }>({
  name: "joint-wants-square",
  severity: "error",
  message: (a) => `${a.join} and ${a.to} do not meet square, and this version cuts a ${a.method} only in parts that do`,
  help: () => "join them with screws, dowels, nails, brads or glue",
  explain: `Tenons, laps and housings are cut by this version only where both parts lie square to the room. Parts that are turned, laid along a line, or cut off at an angle are joined where they touch: with screws, pocket screws, dowels, nails, brads or glue.`,
  wrong: stepExample(
    [
      "left: 0, front: 0, bottom: 0, under: tread }",
      "from: { across: 0, deep: 1, up: 0 }, to: { across: 4, deep: 1, up: 10 }, ends on: [tread.bottom, floor] }",
    ],
    ["  right-leg: { like: left-leg, right: long }\n", ""],
    ["[left-leg, right-leg], with: screws", "left-leg, with: mortise and tenon"],
  ),
  right: stepExample(),
  basis: "this version",
});
