import { solidOf } from "../../../geometry/index.ts";
import { millimetres } from "../../../units/length.ts";
import { add, half, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Hole } from "../../design.ts";
import { extent, shift, unit } from "../space.ts";
import type { Fitter } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { drum } from "./solids.ts";

/** A knob's screw comes from behind, through everything that the knob is on, in holes 1/2 mm larger than it. Common practice, no source. */
const CLEARANCE = millimetres(1, 2);

/** The foot is two thirds of what stands out, the head the rest: near enough to judge what a knob strikes. */
const FOOT = rational(1, 3);

export const fitKnob: Fitter = ({ id, item, part, through, axis, sign, at, body }) => {
  const outward = (by: typeof ZERO) => (sign > 0 ? by : negate(by));
  const [out, foot] = [measureOf(item, "out"), multiply(measureOf(item, "out"), FOOT)];
  const neck = drum(at, axis, outward(foot), half(measureOf(item, "foot")));
  const head = drum(
    shift(at, axis, outward(foot)),
    axis,
    outward(subtract(out, foot)),
    half(measureOf(item, "across")),
  );
  const diameter = add(measureOf(item, "thread"), CLEARANCE);
  const bored = [{ part, box: body }, ...through.map((each) => ({ part: each, box: each.body }))];
  const holes = bored.map(({ part: each, box }): Hole => {
    const deep = extent(box, axis);
    const mouth = shift(at, axis, subtract((sign > 0 ? box.high : box.low)[axis], at[axis]));
    return {
      ...{ part: each.id, kind: "knob", at: mouth, direction: unit(axis, -sign), through: true, for: id },
      stages: [{ diameter, depth: deep }],
      keep: { edge: ZERO, end: ZERO, under: ZERO },
      atBench: true,
    };
  });
  const hardware = [
    { id, item, joint: null, carriedBy: part.id, at, solid: solidOf([...neck.pieces, ...head.pieces]) },
  ];
  return { hardware, holes };
};
