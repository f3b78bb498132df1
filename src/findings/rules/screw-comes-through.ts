import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const screwComesThrough = rule<{
  readonly length: string;
  readonly part: string;
  readonly left: string;
  readonly out: boolean;
}>({
  name: "screw-comes-through",
  severity: "error",
  message: (a) =>
    a.out
      ? `at ${a.length} its point comes out of ${a.part}`
      : `at ${a.length} its point ends ${a.left} under the far side of ${a.part}`,
  help: () => "use a shorter one, or leave the length out: the longest that fits is then chosen",
  explain: `A point that comes out scratches and hurts. 1/8 in of wood should stay over it; less than that shows when the surface is sanded.`,
  wrong: stepExample(
    ["height: 12", "height: 3"],
    ["top: 12", "top: 3"],
    ["with: screws", "with: screws, screw: { gauge: 14, length: 6 }"],
    [
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }",
      "left-leg: { made of: lumber, as: lying flat, grain: across, left: 0, across: 4, front: 0, under: tread }",
    ],
  ),
  right: stepExample(
    ["height: 12", "height: 3"],
    ["top: 12", "top: 3"],
    ["with: screws", "with: screws, screw: { gauge: 8, length: 2 1/2 }"],
    [
      "left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }",
      "left-leg: { made of: lumber, as: lying flat, grain: across, left: 0, across: 4, front: 0, under: tread }",
    ],
  ),
  basis: "common practice, no source",
});
