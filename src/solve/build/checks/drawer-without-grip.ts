import { drawerWithoutGrip } from "../../../findings/rules/drawer-without-grip.ts";
import { TOLERANCE } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf } from "./drawers/drawers.ts";

/** Something to pull a drawer by: hardware on its front, or a hand-hold cut out of it. */
export const drawerWithoutGripRule: Rule = (checked) => drawersOf(checked).map((drawer) => judge(drawer, checked));

function judge(drawer: Drawer, { hardware }: Checked): Verdict {
  const fronts = frontsOf(drawer);
  const ids = fronts.map(({ id }) => id);
  const pulls = hardware.filter(({ joint, carriedBy }) => joint === null && ids.includes(carriedBy)).length;
  const holds = fronts.flatMap(({ features }) => features).filter(({ kind }) => HOLDS.includes(kind)).length;
  const check = {
    ...{ rule: "drawer-without-grip", subject: drawer.motion.name, value: pulls + holds, limit: 1 },
    ...{ unit: "grips", basis: "common practice, no source" },
  };
  if (pulls + holds > 0) return { check: { ...check, verdict: "holds" } };
  const broad = fronts.find(({ axes }) => indexOf(axes.thickness) === drawer.axis) ?? (fronts[0] as Part);
  return {
    check: { ...check, verdict: "warns" },
    finding: drawerWithoutGrip(broad.at, { drawer: drawer.motion.name, front: broad.id }),
  };
}

/** What a hand reaches into. */
const HOLDS: readonly string[] = ["cut-out", "notch"];

/** The parts that are farthest out. */
function frontsOf({ parts, axis, out }: Drawer): readonly Part[] {
  const reach = ({ body }: Part): number => toNumber((out > 0 ? body.high : body.low)[axis]) * out;
  const most = Math.max(...parts.map(reach));
  return parts.filter((part) => reach(part) >= most - TOLERANCE);
}
