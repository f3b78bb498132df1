import { slideSideSpace } from "../../../findings/rules/slide-side-space.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../units/length.ts";
import { half, rational, toNumber } from "../../../units/rational.ts";
import { measureOf } from "../../design/hardware/items.ts";
import type { Checked, Rule, Verdict } from "./check.ts";
import { type Drawer, drawersOf, type SlideOf, spanAlong } from "./drawers/drawers.ts";
import { worstLap } from "./slide-needs-packing.ts";

/** Between a drawer's side and its case there is what the slide wants: no less, since it binds; and no more than a step of marking, which card makes up. */
export const slideSideSpaceRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer) => drawer.slides.flatMap((slide) => judge(slide, drawer, checked)));

function judge(slide: SlideOf, drawer: Drawer, checked: Checked): readonly Verdict[] {
  const { onCase, side, wall, joint } = slide;
  const { motion, axis } = drawer;
  const { design, print } = checked;
  const { item } = onCase;
  const across = [0, 1].find((i) => i !== axis) as 0 | 1;
  const [a, b] = [spanAlong(side, across), spanAlong(wall, across)];
  const gap = Math.max(b[0] - a[1], a[0] - b[1]);
  const window = windowOf(item, toNumber(half(measureOf(item, "narrower"))), a[1] - a[0]);
  const most = window.high + toNumber(design.fits);
  const short = gap < window.low - TOLERANCE;
  const check = {
    ...{ rule: "slide-side-space", subject: joint.id, unit: "mm", value: gap / UNITS_PER_MM },
    limit: (gap > window.high ? most : window.low) / UNITS_PER_MM,
    basis: "the slide's own measures; what a step of marking leaves is made up with card",
  };
  if (!short && gap <= most + TOLERANCE) return [{ check: { ...check, verdict: "holds" } }];
  // What wants packing has its space from that, and is told there.
  if (!short && joint.method === "slides" && worstLap(slide, drawer, checked).lap > TOLERANCE) return [];
  const told = (units: number): string => print(rational(Math.round(Math.abs(units))));
  const finding = slideSideSpace(side.at, {
    ...{ drawer: motion.name, side: side.id, wall: wall.id, gap: told(gap), kind: item.kind },
    ...{
      low: told(window.low),
      high: told(window.high),
      by: told(short ? window.low - gap : gap - window.high),
      short,
    },
  });
  return [{ check: { ...check, verdict: short ? "fails" : "warns" }, finding }];
}

/** What a slide wants beside the box. One under the box wants it inside: beside the box it is that, less its side. */
function windowOf(item: SlideOf["onCase"]["item"], nominal: number, thick: number) {
  const range = item.ranges.get("side space");
  if (range) return { low: toNumber(range.low), high: toNumber(range.high) };
  return { low: nominal - thick, high: nominal - thick + 0.5 * UNITS_PER_MM };
}
