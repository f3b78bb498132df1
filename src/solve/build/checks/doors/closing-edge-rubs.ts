import { closingEdgeRubs } from "../../../../findings/rules/closing-edge-rubs.ts";
import { circlePoint } from "../../../../geometry/angle.ts";
import { millimetres } from "../../../../units/length.ts";
import { tellLength } from "../../../../units/tell-length.ts";
import type { Rule, Verdict } from "../check.ts";
import { around, millimetresOf } from "../standing/weight-and-feet.ts";
import { beside, type Door, doorsOf, isOnPins } from "./doors.ts";

/** The inner corner of the closing edge swings out by √(W² + t²) − W, W and t from the pin: that has to find room in the gap. */
export const closingEdgeRubsRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const gap = gapOf(door, checked);
    if (!isOnPins(door) || !door.inset || gap === null) return [];
    const { bounds, motion, parts, wide, thick, free, opens } = door;
    const pin = millimetresOf(motion.poses[0]?.rotate.about[0] ?? [0, 0, 0]);
    const far = Math.abs((free > 0 ? bounds.high : bounds.low)[wide] - pin[wide]);
    // Beads and strips on its back lie farther in than its edge.
    const edge = around(parts.flatMap(({ solid }) => (reaches(around([solid]), door) ? [solid] : [])));
    const deep = Math.abs((opens > 0 ? edge.low : edge.high)[thick] - pin[thick]);
    const out = Math.sqrt(far * far + deep * deep) - far;
    const check = {
      ...{ rule: "closing-edge-rubs", subject: motion.name, value: out, limit: gap, unit: "mm" },
      basis:
        "geometry: √(W² + (t + k)²) − W, where W is from the pin to the closing edge and t + k from the pin to the inner face",
    };
    if (out < gap) return [{ check: { ...check, verdict: "holds" } }];
    const tell = (mm: number): string => tellLength(millimetres(Math.round(mm * 1000), 1000), checked.design.units);
    const finding = closingEdgeRubs(door.joint.at, {
      ...{ door: motion.name, out: tell(out), gap: tell(gap), degrees: bevelFor(far + gap, far, deep) },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });

const reaches = ({ low, high }: Door["bounds"], { bounds, wide, free }: Door): boolean =>
  free > 0 ? bounds.high[wide] - high[wide] < 0.01 : low[wide] - bounds.low[wide] < 0.01;

/** Whole degrees of the bevel that brings the inner corner inside of the arc. */
function bevelFor(reach: number, far: number, deep: number): number {
  for (let degrees = 1; degrees < 45; degrees += 1) {
    const [cos, sin] = circlePoint(degrees, 360);
    const inner = far - (deep * sin) / cos;
    if (Math.sqrt(inner * inner + deep * deep) < reach) return degrees;
  }
  return 45;
}

/** From the closing edge to what is nearest beside it; null where nothing is. Of a pair the other is open first, if it has to be. */
function gapOf(door: Door, checked: Parameters<typeof beside>[1]): number | null {
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
