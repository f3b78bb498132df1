import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const holesMeet = rule<{ readonly part: string }>({
  name: "holes-meet",
  severity: "error",
  message: (a) => `two holes in ${a.part} run into each other`,
  help: () => "move one of the two",
  explain: `Two holes that meet leave neither screw with enough wood, and one screw can hit the other.`,
  wrong: stepExample([
    "top: 12 }",
    "top: 12, hole: [{ in: top, from left: 12, from front: 1 3/4, diameter: 1/2, deep: 1 }, { in: top, from left: 12 1/4, from front: 1 3/4, diameter: 1/2, deep: 1 }] }",
  ]),
  right: stepExample(),
  basis: "geometry",
});
