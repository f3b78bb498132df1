import { millimetres } from "../../../units/length.ts";
import { add, half, max, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Hole } from "../../design.ts";
import { extent, shift, triple, unit } from "../space.ts";
import type { Fitter } from "./fitter.ts";
import { measureOf } from "./items.ts";
import { boxSolid } from "./solids.ts";

/** Left under the point of its screw (common practice, no source). */
const UNDER = millimetres(3, 2);

/** A button as it lies while the drawer goes in, its long side level, on one screw through its middle. */
export const fitDrawerStop: Fitter = ({ id, item, part, axis, sign, at, body }) => {
  const [long, wide, thick] = [measureOf(item, "long"), measureOf(item, "wide"), measureOf(item, "thick")];
  const end = shift(at, axis, sign > 0 ? thick : negate(thick));
  const across = (i: 0 | 1 | 2) => half(i === 2 ? wide : long);
  const solid = boxSolid({
    low: triple((i) => (i === axis ? min(at[i], end[i]) : subtract(at[i], across(i)))),
    high: triple((i) => (i === axis ? max(at[i], end[i]) : add(at[i], across(i)))),
  });
  const deep = min(subtract(measureOf(item, "screw"), thick), subtract(extent(body, axis), UNDER));
  if (deep.n <= 0n) return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes: [] };
  const pilot: Hole = {
    ...{ part: part.id, kind: "pilot", at, direction: unit(axis, -sign), through: false, for: id, atBench: true },
    stages: [{ diameter: multiply(measureOf(item, "thread"), rational(2, 3)), depth: deep }],
    keep: { edge: ZERO, end: ZERO, under: ZERO },
  };
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes: [pilot] };
};
