import { benchEndTips } from "../../../findings/rules/bench-end-tips.ts";
import { millimetres } from "../../../units/length.ts";
import type { Rule, Verdict } from "./check.ts";
import { seatOf } from "./seat-bends.ts";
import { around, centreOf, footing, massText, pounds, total, weights } from "./standing/weight-and-feet.ts";

/** Who sits at an end sits this far in from it; and the weight that it has to hold (common practice, no source). */
const SITS_IN = 50.8;
const LIMIT = pounds(300);

const SIDES = [
  ["left", 0, false],
  ["right", 0, true],
  ["front", 1, false],
  ["back", 1, true],
] as const;

/** A seat does not tip when somebody sits at one end of it, or on its edge. */
export const benchEndTipsRule: Rule = (checked) => {
  const { design, print } = checked;
  const seat = design.seats ? seatOf(checked) : [];
  if (!design.seats || seat.length === 0) return [];
  const all = weights(checked);
  const [kg, centre, feet, top] = [total(all), centreOf(all), footing(checked), around(seat.map(({ solid }) => solid))];
  return SIDES.flatMap(([end, axis, high]): readonly Verdict[] => {
    const sign = high ? 1 : -1;
    const [leg, edge] = high ? [feet.high[axis], top.high[axis]] : [feet.low[axis], top.low[axis]];
    const arm = sign * (leg - centre[axis]);
    const overhang = sign * (edge - leg);
    const lever = overhang - SITS_IN;
    // Nobody sits beyond the legs.
    if (lever <= 0) return [];
    const holds = (kg * arm) / lever;
    const check = { rule: "bench-end-tips", subject: `${end} end`, value: holds, limit: LIMIT, unit: "kg" };
    const basis = "moments about the legs; limit: common practice, no source";
    if (holds >= LIMIT) return [{ check: { ...check, basis, verdict: "holds" } }];
    // kg (half − overhang) = limit (overhang − 2 in), solved for the overhang.
    const most = (kg * (arm + overhang) + LIMIT * SITS_IN) / (kg + LIMIT);
    const tell = (mm: number): string => print(millimetres(Math.floor(mm * 1000), 1000));
    const finding = benchEndTips(design.seats?.at ?? (seat[0] as (typeof seat)[number]).at, {
      ...{ end, overhang: tell(overhang), most: tell(Math.floor(most / STEP) * STEP) },
      ...{ holds: massText(holds, design.units), limit: massText(LIMIT, design.units) },
    });
    return [{ check: { ...check, basis, verdict: "fails" }, finding }];
  });
};

/** A remedy is told to the eighth of an inch. */
const STEP = 25.4 / 8;
