import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const turnEdge = rule<{ readonly edge: string; readonly about: string }>({
  name: "turn-edge",
  severity: "error",
  message: (a) => `the ${a.edge} edge does not run ${a.about}, so nothing turns about it that way`,
  help: () => "name an edge along that direction: across runs from left to right, deep from front to back, up stands",
  explain: `A part turns about a line along \`about\`. An edge is named by its two faces and runs in the third direction: \`bottom back\` runs across, \`bottom left\` runs deep, \`left front\` stands.`,
  wrong: stepExample([
    "right: long, front: 0",
    "right: long, turn: { about: deep, by: 180 deg, at: bottom back edge }, front: 0",
  ]),
  right: stepExample(["right: long, front: 0", "right: long, turn: { about: deep, by: 180 deg }, front: 0"]),
  basis: "the language",
});
