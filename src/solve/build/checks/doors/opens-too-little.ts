import { opensTooLittle } from "../../../../findings/rules/opens-too-little.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf } from "./doors.ts";

/** Degrees that let a hand and what it holds past a door. */
const OPEN = 90;

/** A door opens to a right angle at least, whatever stands beside it. What does not open at all is told by another rule. */
export const opensTooLittleRule: Rule = (checked) =>
  doorsOf(checked)
    .filter(({ motion }) => !motion.strikes)
    .map(({ motion, joint }): Verdict => {
      const check = {
        ...{ rule: "opens-too-little", subject: motion.name, value: motion.range, limit: OPEN, unit: "degrees" },
        basis: "every pose tried; a right angle: common practice, no source",
      };
      if (check.value >= OPEN) return { check: { ...check, verdict: "holds" } };
      const by = motion.stoppedBy ? { moving: motion.stoppedBy.moving, other: motion.stoppedBy.other } : null;
      const finding = opensTooLittle(joint.at, { door: motion.name, free: Math.floor(check.value), by });
      return { check: { ...check, verdict: "warns" }, finding };
    });
