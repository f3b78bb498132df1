import { hingeLeafOffDoor } from "../../../../findings/rules/hinge-leaf-off-door.ts";
import { inches, millimetres, toMillimetres } from "../../../../units/length.ts";
import { add, less, max, subtract, ZERO } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, isOnPins, setBackOf } from "./doors.ts";
import { atLeast, atMost } from "./enough.ts";

/** Of a leaf so much lies on a door that is set back. Common practice, no source. */
const LEAST = { inch: inches(3, 8), mm: millimetres(10) } as const;

/** The leaves of hinges lie on the edge of a door that is set back, so that their screws have wood round them. */
export const hingeLeafOffDoorRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { item, joint, motion, inset } = door;
    const back = setBackOf(door, checked);
    if (!isOnPins(door) || !inset || item.words.get("fit") === "on the face" || back.n <= 0n) return [];
    const { design, print } = checked;
    const [leaf, least] = [measureOf(item, "leaf"), LEAST[design.units]];
    const on = subtract(leaf, back);
    const check = {
      ...{ rule: "hinge-leaf-off-door", subject: motion.name, unit: "mm", basis: "common practice, no source" },
      ...{ value: toMillimetres(on), limit: toMillimetres(least) },
    };
    if (!less(on, least)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = hingeLeafOffDoor(joint.at, {
      ...{ door: motion.name, leaf: print(leaf), back: print(back), on: print(max(on, ZERO)), least: print(least) },
      most: atMost(max(subtract(leaf, least), ZERO), design.units),
      wanted: atLeast(add(back, least), design.units),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
