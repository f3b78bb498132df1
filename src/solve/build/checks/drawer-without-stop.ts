import { drawerWithoutStop } from "../../../findings/rules/drawer-without-stop.ts";
import type { Rule, Verdict } from "./check.ts";
import { drawersOf } from "./drawers/drawers.ts";
import { stopsAfter, stopsIn } from "./drawers/stops.ts";

/** A drawer on wood comes right out, on somebody's feet, unless something stops it. Slides stop theirs. */
export const drawerWithoutStopRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer): readonly Verdict[] => {
    const onSlides = drawer.slides.length > 0;
    const ends = stopsIn(drawer, checked).map((button) => stopsAfter(button, drawer, checked));
    const stops = ends.filter((end) => typeof end === "number").length;
    const check = {
      ...{ rule: "drawer-without-stop", subject: drawer.motion.name, value: onSlides ? 1 : stops, limit: 1 },
      ...{ unit: "stops", basis: "common practice, no source" },
    };
    if (check.value > 0) return [{ check: { ...check, verdict: "holds" } }];
    const [part] = drawer.parts;
    if (!part) return [];
    const back = drawer.parts.find(({ id }) => id.endsWith("box-back")) ?? part;
    const trouble = typeof ends[0] === "string" ? ends[0] : null;
    const told = { drawer: drawer.motion.name, back: back.id, button: trouble };
    return [{ check: { ...check, verdict: "warns" }, finding: drawerWithoutStop(part.at, told) }];
  });
