import { footOffFloor } from "../../../findings/rules/foot-off-floor.ts";
import { toMillimetres } from "../../../units/length.ts";
import { less, negate, subtract } from "../../../units/rational.ts";
import { ON_FLOOR } from "../../design/hardware/fitters.ts";
import { measureOf } from "../../design/hardware/items.ts";
import type { Rule, Verdict } from "./check.ts";

/** Every foot ends on the floor, which is the bottom of the outside. */
export const footOffFloorRule: Rule = ({ design, print }) =>
  design.fittings.flatMap((fitting): readonly Verdict[] => {
    const [foot] = fitting.hardware;
    if (!foot || !ON_FLOOR.has(foot.item.kind) || fitting.face !== "bottom") return [];
    const high = measureOf(foot.item, "high");
    const above = subtract(foot.at[2], high);
    const check = {
      ...{ rule: "foot-off-floor", subject: fitting.id, value: toMillimetres(above), limit: 0, unit: "mm" },
      basis: "geometry",
    };
    if (above.n === 0n) return [{ check: { ...check, verdict: "holds" } }];
    const into = less(above, subtract(above, above));
    const told = { item: foot.item.kind, part: fitting.part, high: print(high), into, bottom: print(high) };
    const finding = footOffFloor(fitting.at, { ...told, above: print(into ? negate(above) : above) });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
