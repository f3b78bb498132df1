import { slideLongerThanCase } from "../../../findings/rules/slide-longer-than-case.ts";
import { TOLERANCE, toMillimetres, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import { measureOf } from "../../design/hardware/items.ts";
import { longestSold } from "../../design/slides/run.ts";
import { INDICES } from "../../design/space.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, type SlideOf, spanAlong, stillBeside } from "./drawers/drawers.ts";

/** A slide ends before the part that carries it does, and before whatever stands behind it. */
export const slideLongerThanCaseRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer) => drawer.slides.map((slide) => judge(slide, drawer, checked)));

function judge({ onCase, wall }: SlideOf, drawer: Drawer, checked: Checked): Verdict {
  const { print } = checked;
  const length = measureOf(onCase.item, "length");
  const room = roomFor(onCase.solid, wall, drawer, checked);
  const check = {
    ...{ rule: "slide-longer-than-case", subject: onCase.id, unit: "mm", basis: "geometry" },
    value: toMillimetres(length),
    limit: room / UNITS_PER_MM,
  };
  if (toNumber(length) <= room + TOLERANCE) return { check: { ...check, verdict: "holds" } };
  const limit = rational(Math.round(Math.max(0, room)));
  const fits = longestSold(onCase.item, limit);
  const finding = slideLongerThanCase(wall.at, {
    ...{ wall: wall.id, drawer: drawer.motion.name, slide: print(length), room: print(limit) },
    more: print(rational(Math.round(toNumber(length) - room))),
    fits: toNumber(fits) <= room + TOLERANCE ? print(fits) : null,
  });
  return { check: { ...check, verdict: "fails" }, finding };
}

/** From the front end of the slide to the end of its wall, or to what stands in its way before that. */
function roomFor(
  { low, high }: SlideOf["onCase"]["solid"],
  wall: Drawer["parts"][number],
  drawer: Drawer,
  checked: Checked,
): number {
  const { axis, out } = drawer;
  const start = out > 0 ? high[axis] : low[axis];
  const depthOf = (at: number): number => (out > 0 ? start - at : at - start);
  const end = spanAlong(wall, axis)[out > 0 ? 0 : 1];
  const behind = stillBeside(drawer, checked).flatMap((part): readonly number[] => {
    const across = INDICES.filter((i) => i !== axis);
    const meets = across.every((i) => {
      const [from, to] = spanAlong(part, i);
      return Math.min(to, high[i]) - Math.max(from, low[i]) > TOLERANCE;
    });
    const near = depthOf(spanAlong(part, axis)[out > 0 ? 1 : 0]);
    return part !== wall && meets && near > TOLERANCE ? [near] : [];
  });
  return Math.min(depthOf(end), ...behind);
}
