import { hingeBound } from "../../../../findings/rules/hinge-bound.ts";
import { toMillimetres } from "../../../../units/length.ts";
import { half, multiply, rational, subtract } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, isOnPins } from "./doors.ts";

/** Shut, both leaves find room in the gap and in what was cut for them: closed thickness − gap − 2 mortises is no more than nothing. */
export const hingeBoundRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { item, joint, motion } = door;
    if (!isOnPins(door) || item.words.get("fit") === "on the face") return [];
    const { design, print } = checked;
    const closed = measureOf(item, "closed");
    const cuts = design.parts.flatMap(({ features }) =>
      features.flatMap((each) => (each.for === joint.id && "size" in each ? [each.size[2]] : [])),
    );
    const mortise = cuts[0] ?? rational(0);
    const over = subtract(subtract(closed, joint.gap), multiply(mortise, rational(2)));
    const check = {
      ...{ rule: "hinge-bound", subject: motion.name, value: toMillimetres(over), limit: 0, unit: "mm" },
      basis: "instructions of hinge makers, and arithmetic: closed thickness − gap − 2 × mortise",
    };
    if (over.n <= 0n) return [{ check: { ...check, verdict: "holds" } }];
    const deep = print(half(subtract(closed, joint.gap)));
    const finding = hingeBound(joint.at, { door: motion.name, closed: print(closed), gap: print(joint.gap), deep });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
