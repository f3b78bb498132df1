import { drawerWithoutStop } from "../../../findings/rules/drawer-without-stop.ts";
import { TOLERANCE } from "../../../units/length.ts";
import { half, toNumber } from "../../../units/rational.ts";
import { measureOf } from "../../design/hardware/items.ts";
import type { AxisIndex } from "../../design/space.ts";
import type { Hardware } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, spanAlong, stillBeside } from "./drawers/drawers.ts";

/** A drawer on wood comes right out, on somebody's feet, unless something stops it. Slides stop theirs. */
export const drawerWithoutStopRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer): readonly Verdict[] => {
    const onSlides = drawer.slides.length > 0;
    const buttons = checked.hardware.filter(
      ({ item, carriedBy }) => item.kind === "drawer stop" && drawer.motion.moves.includes(carriedBy),
    );
    const troubles = buttons.map((button) => troubleOf(button, drawer, checked));
    const stops = troubles.filter((trouble) => trouble === null).length;
    const check = {
      ...{ rule: "drawer-without-stop", subject: drawer.motion.name, value: onSlides ? 1 : stops, limit: 1 },
      ...{ unit: "stops", basis: "common practice, no source" },
    };
    if (check.value > 0) return [{ check: { ...check, verdict: "holds" } }];
    const [part] = drawer.parts;
    if (!part) return [];
    const back = drawer.parts.find(({ id }) => id.endsWith("box-back")) ?? part;
    const told = { drawer: drawer.motion.name, back: back.id, button: troubles[0] ?? null };
    return [{ check: { ...check, verdict: "warns" }, finding: drawerWithoutStop(part.at, told) }];
  });

/** A button turned up needs room there, and something that still stands before it on its way out, lower than it reaches. */
function troubleOf(button: Hardware, drawer: Drawer, checked: Checked): "no room" | "catches nothing" | null {
  const { axis, out, motion } = drawer;
  const aside: AxisIndex = axis === 0 ? 1 : 0;
  const middle = (i: AxisIndex): number => (button.solid.low[i] + button.solid.high[i]) / 2;
  const wide = toNumber(half(measureOf(button.item, "wide")));
  const reach = middle(2) + toNumber(half(measureOf(button.item, "long")));
  const [near, far] = [button.solid.low[axis], button.solid.high[axis]];
  const way = Math.abs(motion.poses.at(-1)?.shift[axis] ?? 0);
  const over = stillBeside(drawer, checked).filter((part) => {
    const [low, high] = spanAlong(part, aside);
    const [bottom, top] = spanAlong(part, 2);
    const beside = low < middle(aside) + wide - TOLERANCE && high > middle(aside) - wide + TOLERANCE;
    return beside && bottom < reach - TOLERANCE && top > middle(2);
  });
  const meets = (from: number, to: number): boolean =>
    over.some((part) => {
      const [low, high] = spanAlong(part, axis);
      return low < to - TOLERANCE && high > from + TOLERANCE;
    });
  if (meets(near, far)) return "no room";
  return (out > 0 ? meets(far, far + way) : meets(near - way, near)) ? null : "catches nothing";
}
