import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const holeRunsIntoCut = rule<{ readonly part: string; readonly hole: string; readonly cut: string }>({
  name: "hole-runs-into-cut",
  severity: "error",
  message: (a) => `a ${a.hole} hole in ${a.part} runs into a ${a.cut} that is not of its own joint`,
  help: () => "move the fastener (count, in from ends), or the cut",
  explain: `A hole that breaks into a mortise, a groove or a lap leaves its screw without wood, or cuts what sits there.`,
  wrong: stepExample([
    "top: 12 }",
    "top: 12, groove: { in: bottom, near: front, in from: 1 1/2, wide: 1/2, deep: 3/4 }, hole: { in: top, from left: 12, from front: 1 3/4, diameter: 1/2, deep: 1 } }",
  ]),
  right: stepExample(),
  basis: "geometry",
});
