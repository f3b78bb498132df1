import { closingEdgeRubs } from "../../../../findings/rules/closing-edge-rubs.ts";
import { circlePoint } from "../../../../geometry/angle.ts";
import { millimetres } from "../../../../units/length.ts";
import { tellLength } from "../../../../units/tell-length.ts";
import type { Rule, Verdict } from "../check.ts";
import { closingEdgeOf } from "./closing-edge.ts";
import { doorsOf } from "./doors.ts";

/** The inner corner of the closing edge swings out by √(W² + t²) − W, W and t from the pin: that has to find room in the gap. */
export const closingEdgeRubsRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const edge = closingEdgeOf(door, checked);
    if (edge === null) return [];
    const { motion, joint } = door;
    const { far, deep, out, gap } = edge;
    const check = {
      ...{ rule: "closing-edge-rubs", subject: motion.name, value: out, limit: gap, unit: "mm" },
      basis:
        "geometry: √(W² + (t + k)²) − W, where W is from the pin to the closing edge and t + k from the pin to the inner face",
    };
    if (out < gap) return [{ check: { ...check, verdict: "holds" } }];
    const tell = (mm: number): string => tellLength(millimetres(Math.round(mm * 1000), 1000), checked.design.units);
    const finding = closingEdgeRubs(joint.at, {
      ...{ door: motion.name, out: tell(out), gap: tell(gap), degrees: bevelFor(far + gap, far, deep) },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });

/** Whole degrees of the bevel that brings the inner corner inside of the arc. */
function bevelFor(reach: number, far: number, deep: number): number {
  for (let degrees = 1; degrees < 45; degrees += 1) {
    const [cos, sin] = circlePoint(degrees, 360);
    const inner = far - (deep * sin) / cos;
    if (Math.sqrt(inner * inner + deep * deep) < reach) return degrees;
  }
  return 45;
}
