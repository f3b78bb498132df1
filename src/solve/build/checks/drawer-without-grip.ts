import { drawerWithoutGrip } from "../../../findings/rules/drawer-without-grip.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, spanAlong, stillBeside } from "./drawers/drawers.ts";

/** Something to pull a drawer by: hardware on its front, a hand-hold cut out of it, or its lower edge where that hangs free. */
export const drawerWithoutGripRule: Rule = (checked) => drawersOf(checked).map((drawer) => judge(drawer, checked));

function judge(drawer: Drawer, checked: Checked): Verdict {
  const { hardware } = checked;
  const fronts = frontsOf(drawer);
  const ids = fronts.map(({ id }) => id);
  const pulls = hardware.filter(({ joint, carriedBy }) => joint === null && ids.includes(carriedBy)).length;
  // A notch in a front that its own sides come through is full of them.
  const isHold = (kind: string): boolean => kind === "cut-out" || (kind === "notch" && fronts.length === 1);
  const holds = fronts.flatMap(({ features }) => features).filter(({ kind }) => isHold(kind)).length;
  const hanging = fronts.filter((front) => hangsFree(front, drawer, checked)).length;
  const grips = pulls + holds + hanging;
  const check = {
    ...{ rule: "drawer-without-grip", subject: drawer.motion.name, value: grips, limit: 1 },
    ...{ unit: "grips", basis: "common practice, no source" },
  };
  if (grips > 0) return { check: { ...check, verdict: "holds" } };
  const broad = fronts.find(({ axes }) => indexOf(axes.thickness) === drawer.axis) ?? (fronts[0] as Part);
  return {
    check: { ...check, verdict: "warns" },
    finding: drawerWithoutGrip(broad.at, { drawer: drawer.motion.name, front: broad.id }),
  };
}

/** Room for the tips of the fingers behind a lower edge, and how thick they are. Units of length; common practice, no source. */
const [TIPS, FINGER] = [12 * UNITS_PER_MM, 20 * UNITS_PER_MM];

/** Whether there is nothing behind the lower edge of a front, of the drawer or of what stands still, that keeps the fingers from it. */
function hangsFree(front: Part, drawer: Drawer, checked: Checked): boolean {
  const { axis, out, parts } = drawer;
  const across = axis === 0 ? 1 : 0;
  const [low, high] = [spanAlong(front, axis)[0], spanAlong(front, axis)[1]];
  const behind = out > 0 ? [low - FINGER, low] : [high, high + FINGER];
  const [left, right] = spanAlong(front, across);
  const lower = spanAlong(front, 2)[0];
  const inTheWay = (part: Part): boolean => {
    const [from, to] = spanAlong(part, axis);
    const [start, end] = spanAlong(part, across);
    const [bottom, top] = spanAlong(part, 2);
    const beside = from < (behind[1] as number) && to > (behind[0] as number) && start < right && end > left;
    return beside && top > lower - FINGER && bottom < lower + TIPS;
  };
  const others = parts.filter((part) => part !== front);
  return (
    others.some((part) => spanAlong(part, 2)[0] > lower) && ![...others, ...stillBeside(drawer, checked)].some(inTheWay)
  );
}

/** The parts that are farthest out. */
function frontsOf({ parts, axis, out }: Drawer): readonly Part[] {
  const reach = ({ body }: Part): number => toNumber((out > 0 ? body.high : body.low)[axis]) * out;
  const most = Math.max(...parts.map(reach));
  return parts.filter((part) => reach(part) >= most - TOLERANCE);
}
