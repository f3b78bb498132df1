import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const screwNearEdge = rule<{ readonly part: string; readonly edge: string; readonly screw: string }>({
  name: "screw-near-edge",
  severity: "warning",
  message: (a) => `a ${a.screw} screw sits ${a.edge} from the edge of ${a.part}`,
  help: () => "use a thinner screw, or wider wood",
  explain: `A screw closer to an edge than twice its thickness is likely to split the wood. Four times is the usual distance.`,
  wrong: stepExample(
    ["with: screws", "with: screws, screw: { gauge: 14, length: 3 }"],
    ["  lumber:", "  lath: { sold as: 1x4, wood: spruce }\n  lumber:"],
    ["left-leg: { made of: lumber", "left-leg: { made of: lath"],
  ),
  right: stepExample(),
  basis: "common practice, no source",
});
