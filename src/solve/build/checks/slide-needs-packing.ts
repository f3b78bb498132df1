import { slideNeedsPacking } from "../../../findings/rules/slide-needs-packing.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, type SlideOf, spanAlong, stillBeside } from "./drawers/drawers.ts";

/** Nothing in front of a slide reaches in beyond the face that it is screwed to, such as the stile of a face frame. */
export const slideNeedsPackingRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer) =>
    drawer.slides.filter(({ joint }) => joint.method === "slides").map((slide) => judge(slide, drawer, checked)),
  );

function judge(slide: SlideOf, drawer: Drawer, checked: Checked): Verdict {
  const { wall, joint } = slide;
  const laps = stillBeside(drawer, checked).map((part) => ({ part, lap: lapOf(part, slide, drawer) }));
  const worst = laps.reduce((best, each) => (each.lap > best.lap ? each : best), { part: wall, lap: 0 });
  const check = {
    ...{ rule: "slide-needs-packing", subject: joint.id, unit: "mm", basis: "geometry" },
    ...{ value: worst.lap / UNITS_PER_MM, limit: 0 },
  };
  if (worst.lap <= TOLERANCE) return { check: { ...check, verdict: "holds" } };
  const lap = checked.print(rational(Math.round(worst.lap)));
  const finding = slideNeedsPacking(worst.part.at, {
    part: worst.part.id,
    wall: wall.id,
    drawer: drawer.motion.name,
    lap,
  });
  return { check: { ...check, verdict: "fails" }, finding };
}

/** How far a part reaches into the way of the slide's half on the drawer. */
function lapOf(part: Part, { onDrawer, onCase, side, wall }: SlideOf, { axis, out, motion }: Drawer): number {
  const { low, high } = onDrawer.solid;
  const [from, to] = spanAlong(part, axis);
  const ahead = out > 0 ? [high[axis], high[axis] + motion.range] : [low[axis] - motion.range, low[axis]];
  const [bottom, top] = spanAlong(part, 2);
  const inTheWay =
    Math.min(to, ahead[1] as number) - Math.max(from, ahead[0] as number) > TOLERANCE &&
    Math.min(top, high[2]) - Math.max(bottom, low[2]) > TOLERANCE;
  if (!inTheWay) return 0;
  const across = axis === 0 ? 1 : 0;
  const [start, end] = spanAlong(part, across);
  const leftWall = toNumber(wall.body.low[across]) < toNumber(side.body.low[across]);
  const face = leftWall ? onCase.solid.low[across] : onCase.solid.high[across];
  // It has to begin at the wall, or beyond it: what stands in the middle of the opening is another matter.
  if (leftWall ? start > high[across] : end < low[across]) return 0;
  return leftWall ? end - face : face - start;
}
