import { hingeLeafToEdge } from "../../../../findings/rules/hinge-leaf-to-edge.ts";
import { inches, millimetres, toMillimetres } from "../../../../units/length.ts";
import { add, less, subtract } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, isOnPins, setBackOf, thicknessOf } from "./doors.ts";
import { atMost } from "./enough.ts";

/** Behind a leaf that lies on the edge of a door 1/8 in (3 mm) of it stay whole. */
export const hingeLeafToEdgeRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { item, joint, motion, inset } = door;
    if (!isOnPins(door) || !inset || item.words.get("fit") === "on the face") return [];
    const { design, print } = checked;
    const least = design.units === "inch" ? inches(1, 8) : millimetres(3);
    const [thick, leaf] = [thicknessOf(door), measureOf(item, "leaf")];
    // A door set back begins behind the barrel by so much.
    const reach = add(thick, setBackOf(door, checked));
    const left = subtract(reach, leaf);
    const check = {
      ...{ rule: "hinge-leaf-to-edge", subject: motion.name, unit: "mm", basis: "common practice, no source" },
      ...{ value: toMillimetres(left), limit: toMillimetres(least) },
    };
    if (!less(left, least)) return [{ check: { ...check, verdict: "holds" } }];
    const told = { door: motion.name, thick: print(thick), leaf: print(leaf), least: print(least) };
    const finding = hingeLeafToEdge(joint.at, { ...told, most: atMost(subtract(reach, least), design.units) });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
