/** Where a button inside a drawer, turned up, stops it. */
import { TOLERANCE } from "../../../../units/length.ts";
import { half, toNumber } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Hardware } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { type Drawer, spanAlong, stillBeside } from "./drawers.ts";

export type StopTrouble = "no room" | "catches nothing";

export const stopsIn = ({ motion }: Drawer, { hardware }: Checked): readonly Hardware[] =>
  hardware.filter(({ item, carriedBy }) => item.kind === "drawer stop" && motion.moves.includes(carriedBy));

/** How far it lets the drawer out, in units of length; or what is wrong: turned up it needs room there, and something that still stands before it on its way out, lower than it reaches. */
export function stopsAfter(button: Hardware, drawer: Drawer, checked: Checked): number | StopTrouble {
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
  const gaps = over.map((part) => {
    const [low, high] = spanAlong(part, axis);
    return out > 0 ? { from: low - far, to: high - near } : { from: near - high, to: far - low };
  });
  // Behind the button nothing is in its way; what it has not passed yet begins beside it or before it.
  const before = gaps.filter(({ to }) => to > TOLERANCE);
  if (before.some(({ from }) => from < -TOLERANCE)) return "no room";
  const first = Math.min(...before.map(({ from }) => from));
  return first < way - TOLERANCE ? Math.max(0, first) : "catches nothing";
}
