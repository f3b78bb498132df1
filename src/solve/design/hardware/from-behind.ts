/** Holes right through, for screws that come from behind. */
import type { Solid } from "../../../geometry/index.ts";
import { type Length, millimetres } from "../../../units/length.ts";
import { add, half, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Hole, Part, Point } from "../../design.ts";
import { extent, shift, unit } from "../space.ts";
import type { FittingSite } from "./fitter.ts";
import { drum } from "./solids.ts";

/** Holes are 1/2 mm larger than the screw. Common practice, no source. */
const CLEARANCE = millimetres(1, 2);

/** A head is so many times as wide and as high as its screw is thick. Common practice, no source. */
const HEAD = { wide: rational(2), high: rational(2, 3) } as const;

/** The heads of screws that come from behind, on the last that they pass: they want their room there. */
export function headsBehind(
  { part, through, axis, sign }: FittingSite,
  thread: Length,
  points: readonly Point[],
): readonly Solid[] {
  const { body } = through.at(-1) ?? part;
  const high = multiply(thread, HEAD.high);
  return points.map((at) => {
    const mouth = shift(at, axis, subtract((sign > 0 ? body.low : body.high)[axis], at[axis]));
    return drum(mouth, axis, sign > 0 ? negate(high) : high, half(multiply(thread, HEAD.wide)));
  });
}

/** One hole at each point in the part and, through it when that is in its place, in everything else that the screws pass. */
export function fromBehind(
  { id, part, through, axis, sign }: FittingSite,
  thread: Length,
  points: readonly Point[],
): readonly Hole[] {
  const bore = (each: Part, at: Point): Hole => {
    const mouth = shift(at, axis, subtract((sign > 0 ? each.body.high : each.body.low)[axis], at[axis]));
    return {
      ...{ part: each.id, kind: "knob", at: mouth, direction: unit(axis, -sign), through: true, for: id },
      stages: [{ diameter: add(thread, CLEARANCE), depth: extent(each.body, axis) }],
      keep: { edge: ZERO, end: ZERO, under: ZERO },
      atBench: each.id === part.id,
    };
  };
  return [part, ...through].flatMap((each) => points.map((at) => bore(each, at)));
}
