import { lidWithoutGrip } from "../../../findings/rules/lid-without-grip.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { pinOf } from "./standing/pin.ts";
import { canBeLifted } from "./standing/under-edges.ts";
import { around } from "./standing/weight-and-feet.ts";

const GRIPS: readonly string[] = ["knob", "pull"];

/** Something to lift a lid by: hardware on it, or a lower edge that fingers find. */
export const lidWithoutGripRule: Rule = ({ design, hardware, motions }) =>
  motions.flatMap((motion): readonly Verdict[] => {
    const [first] = motion.poses;
    const parts = design.parts.filter(({ id }) => motion.moves.includes(id));
    const under = design.parts.filter(({ id }) => !motion.moves.includes(id));
    if (motion.kind !== "lift" || !first || parts.length === 0) return [];
    const { low, high } = around(parts.map(({ solid }) => solid));
    const [wide, deep, thick] = [high[0] - low[0], high[1] - low[1], high[2] - low[2]];
    // What stands upright and opens upwards is a flap.
    if (thick > Math.min(wide, deep)) return [];
    const { at, across: axis } = pinOf(motion);
    const free = at[axis] * 2 < low[axis] + high[axis] ? 1 : -1;
    const [own, rest] = [parts.map(({ solid }) => solid), under.map(({ solid }) => solid)];
    const end = axis === 0 ? 1 : 0;
    const held = hardware.filter(
      ({ item, carriedBy }) => GRIPS.includes(item.kind) && motion.moves.includes(carriedBy),
    );
    const lifted =
      canBeLifted(own, rest, axis, free) || ([1, -1] as const).some((out) => canBeLifted(own, rest, end, out));
    const check = {
      ...{ rule: "lid-without-grip", subject: motion.name, value: held.length + (lifted ? 1 : 0), limit: 1 },
      ...{ unit: "grips", basis: "geometry; common practice, no source" },
    };
    if (check.value > 0) return [{ check: { ...check, verdict: "holds" } }];
    // A body of several parts is called by its group, or by its largest one.
    const size = ({ length, width }: Part): number => toNumber(length) * toNumber(width);
    const [largest] = parts.toSorted((a, b) => size(b) - size(a));
    const lid = parts.some(({ id }) => id === motion.name) ? (largest?.id ?? motion.name) : motion.name;
    return largest ? [{ check: { ...check, verdict: "warns" }, finding: lidWithoutGrip(largest.at, { lid }) }] : [];
  });
