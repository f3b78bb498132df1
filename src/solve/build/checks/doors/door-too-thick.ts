import { doorTooThick } from "../../../../findings/rules/door-too-thick.ts";
import { toMillimetres } from "../../../../units/length.ts";
import { less } from "../../../../units/rational.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, thicknessOf } from "./doors.ts";
import { atLeast, atMost } from "./enough.ts";

/** The whole leaf is of a thickness that its hinges take, strips included. */
export const doorTooThickRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const takes = door.item.ranges.get("door thickness");
    if (!takes) return [];
    const { design, print } = checked;
    const thick = thicknessOf(door);
    const thin = less(thick, takes.low);
    const check = {
      ...{ rule: "door-too-thick", subject: door.motion.name, value: toMillimetres(thick), unit: "mm" },
      limit: toMillimetres(thin ? takes.low : takes.high),
      basis: "the hinge's own measure",
    };
    if (!thin && !less(takes.high, thick)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = doorTooThick(door.joint.at, {
      ...{
        door: door.motion.name,
        thick: print(thick),
        low: atLeast(takes.low, design.units),
        high: atMost(takes.high, design.units),
        thin,
      },
      strips: door.parts.length > 1 && less(door.hung.thickness, thick) ? print(door.hung.thickness) : null,
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
