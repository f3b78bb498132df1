import { slideNeedsPacking } from "../../../findings/rules/slide-needs-packing.ts";
import { boxPlanes, intersect, isEmpty } from "../../../geometry/index.ts";
import { type Length, TOLERANCE, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, triple } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, type SlideOf, stillBeside } from "./drawers/drawers.ts";

/** Nothing in front of a slide reaches in beyond the face that it is screwed to, such as the stile of a face frame. */
export const slideNeedsPackingRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer) =>
    drawer.slides.filter(({ joint }) => joint.method === "slides").map((slide) => judge(slide, drawer, checked)),
  );

/** What stands furthest in the way of a slide, and how far, in units. */
export function worstLap(
  slide: SlideOf,
  drawer: Drawer,
  checked: Checked,
): { readonly part: Part; readonly lap: number } {
  const laps = stillBeside(drawer, checked).map((part) => ({ part, lap: lapOf(part, slide, drawer) }));
  return laps.reduce((best, each) => (each.lap > best.lap ? each : best), { part: slide.wall, lap: 0 });
}

function judge(slide: SlideOf, drawer: Drawer, checked: Checked): Verdict {
  const { wall, joint } = slide;
  const worst = worstLap(slide, drawer, checked);
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

/** How far a part reaches into the way of the slide's half on the drawer, from the face that the slide is screwed to. */
function lapOf(part: Part, { onDrawer, side, wall }: SlideOf, { axis, out, motion }: Drawer): number {
  const across = axis === 0 ? 1 : 0;
  const { low, high } = onDrawer.solid;
  const ahead = out > 0 ? [high[axis], high[axis] + motion.range] : [low[axis] - motion.range, low[axis]];
  const atLow = toNumber(wall.body.low[across]) < toNumber(side.body.low[across]);
  const face = toNumber((atLow ? wall.body.high : wall.body.low)[across]);
  // Between the face of the case and the side of the drawer, as high as the slide.
  const [from, to] = atLow ? [face, high[across]] : [low[across], face];
  const ends = (i: AxisIndex, end: 0 | 1): Length =>
    rational(
      Math.round(i === axis ? (ahead[end] as number) : i === across ? (end ? to : from) : end ? high[i] : low[i]),
    );
  const inTheWay = intersect(
    part.solid,
    boxPlanes(
      triple((i) => ends(i, 0)),
      triple((i) => ends(i, 1)),
    ),
  );
  if (isEmpty(inTheWay)) return 0;
  return atLow ? inTheWay.high[across] - face : face - inTheWay.low[across];
}
