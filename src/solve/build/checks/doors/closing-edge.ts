/** How the inner corner of a door's closing edge swings out as it opens, and what room it has for that. In millimetres. */
import type { Part } from "../../../design.ts";
import { around, millimetresOf } from "../standing/weight-and-feet.ts";
import { beside, type Door, type Hung, isOnPins } from "./doors.ts";

export interface ClosingEdge {
  /** From the pin to the closing edge, and to the inner face there. */
  readonly far: number;
  readonly deep: number;
  /** How much farther out the inner corner swings than the edge lies when it is shut; and how much is open there. */
  readonly out: number;
  readonly gap: number;
  /** What ends in that edge, and how thick that is together. */
  readonly parts: readonly Part[];
  readonly thick: number;
}

/** √(W² + (t + k)²) − W, W and t + k from the pin; null of a door that needs no such room. */
export function closingEdgeOf(door: Door, checked: Hung): ClosingEdge | null {
  const gap = gapOf(door, checked);
  if (!isOnPins(door) || !door.inset || gap === null) return null;
  const { bounds, motion, wide, thick, free, opens } = door;
  const pin = millimetresOf(motion.poses[0]?.rotate.about[0] ?? [0, 0, 0]);
  const far = Math.abs((free > 0 ? bounds.high : bounds.low)[wide] - pin[wide]);
  // Beads and strips on its back lie farther in than its edge.
  const parts = door.parts.filter(({ solid }) => reaches(around([solid]), door));
  const edge = around(parts.map(({ solid }) => solid));
  const deep = Math.abs((opens > 0 ? edge.low : edge.high)[thick] - pin[thick]);
  const out = Math.sqrt(far * far + deep * deep) - far;
  return { far, deep, out, gap, parts, thick: edge.high[thick] - edge.low[thick] };
}

const reaches = ({ low, high }: Door["bounds"], { bounds, wide, free }: Door): boolean =>
  free > 0 ? bounds.high[wide] - high[wide] < 0.01 : low[wide] - bounds.low[wide] < 0.01;

/** From the closing edge to what is nearest beside it; null where nothing is. Of a pair the other is open first, if it has to be. */
function gapOf(door: Door, checked: Hung): number | null {
  const { bounds, wide, free, thick, along, motion } = door;
  const open = new Set(
    motion.needs.flatMap(({ motion: name }) => checked.motions.find((each) => each.name === name)?.moves ?? []),
  );
  const gaps = beside(door, checked).flatMap((each) => {
    const other = around([each.solid]);
    const level = [thick, along].every(
      (i) => Math.min(bounds.high[i], other.high[i]) - Math.max(bounds.low[i], other.low[i]) > 0.1,
    );
    const gap = free > 0 ? other.low[wide] - bounds.high[wide] : bounds.low[wide] - other.high[wide];
    return level && gap > -0.1 && !("item" in each) && !open.has(each.id) ? [gap] : [];
  });
  return gaps.length > 0 ? Math.min(...gaps) : null;
}
