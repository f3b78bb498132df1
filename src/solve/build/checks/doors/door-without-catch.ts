import { doorWithoutCatch } from "../../../../findings/rules/door-without-catch.ts";
import { BY_A_CATCH } from "../../../../parse/hardware/cup-hinge.ts";
import type { Rule, Verdict } from "../check.ts";
import { catchesMet, isMet } from "./catch-misses-strike.ts";
import { type Door, doorsOf, isOnPins, writtenWith } from "./doors.ts";
import { freeBoard, keepersOf } from "./keepers.ts";

/** Springs of cup hinges keep their doors shut, where those are not said to need a catch; nothing in hinges that turn about a pin does. */
const isFree = (door: Door): boolean => isOnPins(door) || door.item.words.get("shuts") === BY_A_CATCH;

/** What keeps a door shut that its hinges do not. Of a catch that misses its strike that is told. */
export const doorWithoutCatchRule: Rule = (checked) => {
  const met = catchesMet(checked);
  const own = ({ motion }: Door) => met.filter(({ door }) => motion.moves.includes(door));
  const catchesOf = (door: Door): number => own(door).length;
  const free = doorsOf(checked).filter(isFree);
  const judged = free.filter((door) => own(door).length === 0 || own(door).some(isMet));
  return judged.map((door): Verdict => {
    const { motion, joint } = door;
    const catches = catchesOf(door);
    const check = {
      ...{ rule: "door-without-catch", subject: motion.name, value: catches, limit: 1 },
      ...{ unit: "catches", basis: "common practice, no source" },
    };
    if (catches > 0) return { check: { ...check, verdict: "holds" } };
    // The two of a pair are written in one place.
    const doors = writtenWith(door, free)
      .filter((each) => catchesOf(each) === 0)
      .map((each) => ({
        name: each.motion.name,
        part: freeBoard(each).id,
        line: keepersOf(each, checked)?.catch ?? null,
      }));
    return { check: { ...check, verdict: "warns" }, finding: doorWithoutCatch(joint.at, { doors }) };
  });
};
