import { insetDoorWithoutStop } from "../../../../findings/rules/inset-door-without-stop.ts";
import type { Rule, Verdict } from "../check.ts";
import { around } from "../standing/weight-and-feet.ts";
import { beside, type Door, doorsOf, isOnPins, writtenWith } from "./doors.ts";
import { keepersOf } from "./keepers.ts";

/** So far behind a shut door at most that it stops it before the hinges give; and how much of it has to lie behind the door. Millimetres. */
const [BEHIND, OVER] = [3, 2];

/** What an inset door on pins comes to lie against: a stop, the strike of a catch, or wood behind it. */
export const insetDoorWithoutStopRule: Rule = (checked) => {
  const stopsOf = (door: Door): number => {
    const catches = checked.hardware.filter(
      ({ item, carriedBy, halfOf }) => item.kind === "catch" && halfOf && door.motion.moves.includes(carriedBy),
    );
    return catches.length + beside(door, checked).filter(({ solid }) => isBehind(door, solid)).length;
  };
  const inset = doorsOf(checked).filter((door) => door.inset && isOnPins(door));
  return inset.map((door): Verdict => {
    const check = {
      ...{ rule: "inset-door-without-stop", subject: door.motion.name, value: stopsOf(door) },
      ...{ limit: 1, unit: "stops", basis: "common practice, no source" },
    };
    if (check.value > 0) return { check: { ...check, verdict: "holds" } };
    const doors = writtenWith(door, inset)
      .filter((each) => stopsOf(each) === 0)
      .map((each) => ({ name: each.motion.name, lines: keepersOf(each, checked) }));
    return { check: { ...check, verdict: "warns" }, finding: insetDoorWithoutStop(door.joint.at, { doors }) };
  });
};

function isBehind({ bounds, thick, along, wide, opens }: Door, solid: Parameters<typeof around>[0][number]): boolean {
  const other = around([solid]);
  const away = opens > 0 ? bounds.low[thick] - other.high[thick] : other.low[thick] - bounds.high[thick];
  const over = [along, wide].map(
    (i) => Math.min(bounds.high[i], other.high[i]) - Math.max(bounds.low[i], other.low[i]),
  );
  return away > -0.1 && away <= BEHIND && over.every((by) => by >= OVER);
}
