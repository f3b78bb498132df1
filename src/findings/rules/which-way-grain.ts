import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const whichWayGrain = rule<{ readonly name: string; readonly first: string; readonly second: string }>({
  name: "which-way-grain",
  severity: "error",
  message: (a) => `${a.name} is as big ${a.first} as ${a.second}, so its grain could run either way`,
  help: (a) => `write grain: ${a.first} or grain: ${a.second}`,
  explain: `The length of a board runs with the grain. Where both extents are equal the plan cannot tell, and the look and the strength of the part depend on it.`,
  wrong: stepExample(
    ["stock:", "stock:\n  panel: { sold as: 3/4 birch plywood }"],
    [
      "  right-leg:",
      "  lid: { made of: panel, as: lying flat, left: 4, right: 7 1/2, front: 0, back: 3 1/2, under: tread }\n  right-leg:",
    ],
    ["joints:", "joints:\n  - { join: lid, to: tread, with: glue }"],
  ),
  right: stepExample(
    ["stock:", "stock:\n  panel: { sold as: 3/4 birch plywood }"],
    [
      "  right-leg:",
      "  lid: { made of: panel, as: lying flat, grain: across, left: 4, right: 7 1/2, front: 0, back: 3 1/2, under: tread }\n  right-leg:",
    ],
    ["joints:", "joints:\n  - { join: lid, to: tread, with: glue }"],
  ),
  basis: "the language",
});
