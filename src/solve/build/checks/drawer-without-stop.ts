import { drawerWithoutStop } from "../../../findings/rules/drawer-without-stop.ts";
import type { Rule, Verdict } from "./check.ts";
import { drawersOf } from "./drawers/drawers.ts";

/** A drawer on wood comes right out, on somebody's feet, unless something stops it. Slides stop theirs. */
export const drawerWithoutStopRule: Rule = (checked) =>
  drawersOf(checked).flatMap((drawer): readonly Verdict[] => {
    const onSlides = drawer.slides.length > 0;
    const stops = checked.hardware.filter(
      ({ item, carriedBy }) => item.kind === "drawer stop" && drawer.motion.moves.includes(carriedBy),
    ).length;
    const check = {
      ...{ rule: "drawer-without-stop", subject: drawer.motion.name, value: onSlides ? 1 : stops, limit: 1 },
      ...{ unit: "stops", basis: "common practice, no source" },
    };
    if (check.value > 0) return [{ check: { ...check, verdict: "holds" } }];
    const [part] = drawer.parts;
    if (!part) return [];
    const back = drawer.parts.find(({ id }) => id.endsWith("box-back")) ?? part;
    return [
      {
        check: { ...check, verdict: "warns" },
        finding: drawerWithoutStop(part.at, { drawer: drawer.motion.name, back: back.id }),
      },
    ];
  });
