import type { Length } from "../../../../units/length.ts";
import { compare, equal, subtract } from "../../../../units/rational.ts";
import { acrossOf } from "../../../design/across-of.ts";
import { type AxisIndex, faceOf, indexOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** "face", "edge" or "end": what a side of a board is called that looks along a direction. The two largest sides are faces; square stock has four. */
export const sideWord = (part: Part, axis: AxisIndex): "face" | "edge" | "end" =>
  indexOf(part.axes.length) === axis
    ? "end"
    : indexOf(acrossOf(part)[0]) === axis || equal(part.thickness, part.width)
      ? "face"
      : "edge";

/** Stands after a side that something is as far from as from the one across: it is there too when sides change places. Taken out before it is printed. */
export const MIDWAY = "\ue005";

/** Where a stretch lies in a direction, from the nearer side of the blank: "1/8 in from the front edge". Null where it runs through. */
export function fromNearer(
  work: Pick<Work, "print">,
  part: Part,
  axis: AxisIndex,
  low: Length,
  high: Length,
): string | null {
  const below = subtract(low, part.blank.low[axis]);
  const above = subtract(part.blank.high[axis], high);
  if (below.n <= 0n && above.n <= 0n) return null;
  const nearLow = compare(below, above) <= 0;
  const near = nearLow ? below : above;
  const side = `the ${faceOf(axis, !nearLow)} ${sideWord(part, axis)}${below.n > 0n && equal(below, above) ? MIDWAY : ""}`;
  return near.n <= 0n ? `flush with ${side}` : `${work.print(near)} from ${side}`;
}
