import { drawerWithoutGrip } from "../../../findings/rules/drawer-without-grip.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf } from "./drawers/drawers.ts";

/** Something to pull a drawer by: hardware on its front, or a hand-hold cut out of it. */
export const drawerWithoutGripRule: Rule = (checked) => drawersOf(checked).map((drawer) => judge(drawer, checked));

function judge(drawer: Drawer, { hardware }: Checked): Verdict {
  const front = frontOf(drawer);
  const pulls = hardware.filter(({ joint, carriedBy }) => joint === null && carriedBy === front.id).length;
  const holds = front.features.filter(({ kind }) => kind === "cut-out" || kind === "notch").length;
  const check = {
    ...{ rule: "drawer-without-grip", subject: drawer.motion.name, value: pulls + holds, limit: 1 },
    ...{ unit: "grips", basis: "common practice, no source" },
  };
  if (pulls + holds > 0) return { check: { ...check, verdict: "holds" } };
  return {
    check: { ...check, verdict: "warns" },
    finding: drawerWithoutGrip(front.at, { drawer: drawer.motion.name, front: front.id }),
  };
}

/** The part that is farthest out. */
function frontOf({ parts, axis, out }: Drawer): Part {
  const reach = ({ body }: Part): number => toNumber((out > 0 ? body.high : body.low)[axis]) * out;
  return parts.reduce((best, part) => (reach(part) > reach(best) ? part : best));
}
