import { doorWithoutGrip } from "../../../../findings/rules/door-without-grip.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf } from "./doors.ts";

/** What a hand reaches into. */
const HOLDS: readonly string[] = ["cut-out", "notch"];

/** Something to open a door by: hardware on it, or a hand-hold cut out of it. */
export const doorWithoutGripRule: Rule = (checked) =>
  doorsOf(checked).map(({ motion, parts, joint, hung }): Verdict => {
    const pulls = checked.hardware.filter(
      ({ item, carriedBy }) => GRIPS.includes(item.kind) && motion.moves.includes(carriedBy),
    ).length;
    const holds = parts.flatMap(({ features }) => features).filter(({ kind }) => HOLDS.includes(kind)).length;
    const check = {
      ...{ rule: "door-without-grip", subject: motion.name, value: pulls + holds, limit: 1 },
      ...{ unit: "grips", basis: "common practice, no source" },
    };
    if (check.value > 0) return { check: { ...check, verdict: "holds" } };
    return {
      check: { ...check, verdict: "warns" },
      finding: doorWithoutGrip(hung.at, { door: motion.name, hung: joint.parts[0] }),
    };
  });

const GRIPS: readonly string[] = ["knob", "pull"];
