/** Notches that are marked from the posts they go round, as those stand. */
import { absolute, type Length, less, subtract, ZERO } from "../../../../units/index.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { type AxisIndex, indexOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { notchFor } from "../../notched.ts";
import { called, listed, series, type Work } from "../draft.ts";
import { spanOf } from "./boxes.ts";

export function notchTexts(work: Work, part: Part): readonly string[] {
  const round = makingOf(part).notchedRound ?? [];
  if (round.length === 0) return [];
  const plays = (["length", "width"] as const).flatMap((size) => {
    const own = round.map((id) => playAt(part, work.part(id), indexOf(part.axes[size])));
    const least = own.reduce((so, each) => (less(each, so) ? each : so));
    return less(ZERO, least)
      ? [`${work.print(least)} ${size === "length" ? "along its length" : "across its width"}`]
      : [];
  });
  const play = plays.length > 0 ? ` Saw them larger than drawn by their play: ${series(plays)}.` : "";
  return [
    `Notches: mark them from ${listed(work, round)} as they stand, not by the figures of the next step. Hold the ${called(work, part.id)} to them where it will come, standing out on every side as much as it will, and draw round each.${play}`,
  ];
}

/** How far the inner wall of a notch stays off what goes through it. */
function playAt(part: Part, other: Part, axis: AxisIndex): Length {
  const notch = notchFor(part, other);
  if (!notch) return ZERO;
  const { low, high } = spanOf(notch, axis);
  // The inner wall is that which is not an edge of the part.
  const atLow = !less(part.body.low[axis], low);
  return absolute(atLow ? subtract(high, other.body.high[axis]) : subtract(other.body.low[axis], low));
}
