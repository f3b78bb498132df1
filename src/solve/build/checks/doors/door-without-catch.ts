import { doorWithoutCatch } from "../../../../findings/rules/door-without-catch.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf, isOnPins } from "./doors.ts";
import { freeBoard, keepersOf } from "./keepers.ts";

/** What keeps a door on pins shut. The springs of cup hinges keep theirs. */
export const doorWithoutCatchRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    if (!isOnPins(door)) return [];
    const { motion, joint } = door;
    const catches = checked.hardware.filter(
      ({ item, carriedBy }) => item.kind === "catch" && motion.moves.includes(carriedBy),
    ).length;
    const check = {
      ...{ rule: "door-without-catch", subject: motion.name, value: catches, limit: 1 },
      ...{ unit: "catches", basis: "common practice, no source" },
    };
    if (catches > 0) return [{ check: { ...check, verdict: "holds" } }];
    const line = keepersOf(door, checked)?.catch ?? null;
    return [
      {
        check: { ...check, verdict: "warns" },
        finding: doorWithoutCatch(joint.at, { door: motion.name, part: freeBoard(door).id, line }),
      },
    ];
  });
