import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const whichWayRound = rule<{ readonly name: string }>({
  name: "which-way-round",
  severity: "error",
  message: (a) => `${a.name} could be turned in more than one way with what is said`,
  help: () => "add as: lying flat, on edge or upright, and facing: where that leaves two ways",
  explain: `A board has a thickness, a width and a length. Which way it lies follows from what is said of its faces and extents; here more than one way fits.`,
  wrong: stepExample([
    "tread: { made of: lumber, as: lying flat, left: 0, right: long, front: 0, top: 12 }",
    "tread: { made of: lumber, left: 0, front: 0, top: 12, length: long }",
  ]),
  right: stepExample(),
  basis: "the language",
});
