import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const feet = (high: string): string =>
  stepExample(
    ["stock:", `hardware:\n  glide: { kind: foot, across: 1, high: ${high} }\nstock:`],
    ["front: 0, bottom: 0, under: tread }", "front: 0, bottom: 1/4, under: tread }"],
    ["joints:", "fittings:\n  - { fit: glide, to: [left-leg, right-leg] }\njoints:"],
  );

export const footOffFloor = rule<{
  readonly item: string;
  readonly part: string;
  readonly high: string;
  readonly above: string;
  readonly into: boolean;
  readonly bottom: string;
}>({
  name: "foot-off-floor",
  severity: "error",
  message: (a) =>
    a.into
      ? `the ${a.item} under ${a.part} is ${a.high} high and reaches ${a.above} below the floor`
      : `the ${a.item} under ${a.part} is ${a.high} high and ends ${a.above} above the floor`,
  label: () => "does not stand on the floor",
  help: (a) => `put the bottom of ${a.part} at ${a.bottom}, or take a ${a.item} of another height`,
  explain: `The outside of a piece is measured from the floor: feet, levellers and casters count in it. What they are fixed to begins as high as they are.`,
  wrong: feet("1/2"),
  right: feet("1/4"),
  basis: "geometry",
});
