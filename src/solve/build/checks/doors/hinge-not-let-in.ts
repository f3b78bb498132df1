import { hingeNotLetIn } from "../../../../findings/rules/hinge-not-let-in.ts";
import { toMillimetres } from "../../../../units/length.ts";
import { half, subtract } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import { fitOf } from "../../../design/hinges/leaves.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, isOnPins } from "./doors.ts";

/** Hinges that the plan wants mortised are let in: closed thickness − gap is more than nothing. */
export const hingeNotLetInRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { item, joint, motion } = door;
    if (!isOnPins(door) || !item.said.has("fit") || fitOf(item) !== "mortised") return [];
    const { print } = checked;
    const closed = measureOf(item, "closed");
    const over = subtract(closed, joint.gap);
    const check = {
      ...{ rule: "hinge-not-let-in", subject: motion.name, value: toMillimetres(over), limit: 0, unit: "mm" },
      basis: "instructions of hinge makers, and arithmetic: closed thickness − gap",
    };
    if (over.n > 0n) return [{ check: { ...check, verdict: "holds" } }];
    const told = { door: motion.name, closed: print(closed), gap: print(joint.gap), narrower: print(half(closed)) };
    return [{ check: { ...check, verdict: "fails" }, finding: hingeNotLetIn(joint.at, told) }];
  });
