import type { Length } from "../../../units/length.ts";
import { add, type Rational, subtract, sum } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";

/** Sizes as they are printed. The thickness is the stock's and is never rounded. */
export interface PrintedSizes {
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
}

/** Width and length to the step of fits: the body to the nearest step, which it is already, what stands out at both ends together down, so that it goes in. */
export function printedSizes(part: Part, precision: Length): PrintedSizes {
  const along = (size: "width" | "length"): Rational => {
    const axis = indexOf(part.axes[size]);
    const body = roundTo(subtract(part.body.high[axis], part.body.low[axis]), precision);
    const ends = [
      subtract(part.body.low[axis], part.blank.low[axis]),
      subtract(part.blank.high[axis], part.body.high[axis]),
    ];
    return add(body, roundTo(sum(ends), precision, "down"));
  };
  return { thickness: part.thickness, width: along("width"), length: along("length") };
}
