/** Grooves whose ends lie in other cuts are cut from end to end: nothing of it shows, and no stop has to be set. */
import type { Length } from "../../../../units/length.ts";
import { less, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, axisOf, indexOf, triple } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { type BoxFeature, spanOf } from "./boxes.ts";

/** The groove over the whole of the part, where a rabbet as deep as it takes its wood away beyond each end; else as it is. */
export function runThrough(part: Part, groove: BoxFeature): BoxFeature {
  const axis = axisOf(groove.along);
  const own = spanOf(groove, axis);
  const [low, high] = [part.blank.low[axis], part.blank.high[axis]];
  const ends: readonly (readonly [Length, Length])[] = [
    [low, own.low],
    [own.high, high],
  ];
  const open = ends.filter(([from, to]) => less(from, to));
  if (open.length === 0 || !open.every(([from, to]) => isGone(part, groove, axis, from, to))) return groove;
  const positive = groove.along[axis] > 0;
  return {
    ...groove,
    origin: triple((i) => (i === axis ? (positive ? low : high) : groove.origin[i])),
    size: [subtract(high, low), groove.size[1], groove.size[2]],
  };
}

/** Whether a cut runs out at ends that are not square: how long it is depends on where it is measured. */
export function endsAslant({ axes, blank, features }: Part, cut: BoxFeature): boolean {
  const axis = indexOf(axes.length);
  const { low, high } = spanOf(cut, axis);
  return (
    axisOf(cut.along) === axis &&
    !less(blank.low[axis], low) &&
    !less(high, blank.high[axis]) &&
    features.some(({ kind }) => kind === "angled end" || kind === "mitre")
  );
}

/** Whether another cut into the same face has taken what a groove would take there. */
function isGone(part: Part, groove: BoxFeature, axis: AxisIndex, from: Length, to: Length): boolean {
  const across = axisOf(groove.across);
  const wide = spanOf(groove, across);
  return part.features.some((other) => {
    if (other.kind !== "rabbet" || !("size" in other) || !("into" in other)) return false;
    const box = other as BoxFeature;
    if (box.into.some((c, i) => c !== groove.into[i]) || less(box.size[2], groove.size[2])) return false;
    const [long, side] = [spanOf(box, axis), spanOf(box, across)];
    return !less(from, long.low) && !less(long.high, to) && !less(wide.low, side.low) && !less(side.high, wide.high);
  });
}
