import { fittingBreaksOut } from "../../../findings/rules/fitting-breaks-out.ts";
import { type Length, millimetres, toMillimetres } from "../../../units/length.ts";
import { add, half, less, min, subtract, ZERO } from "../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES } from "../../design/space.ts";
import type { Hole, Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** Left beside a hole. Common practice, no source. */
const LEAST = millimetres(3);

/** Wood beside a hole to the side of its part where there is least. */
interface Side {
  readonly left: Length;
  readonly axis: AxisIndex;
  readonly high: boolean;
}

/** Holes for what is fixed to a part stay inside of it. */
export const fittingBreaksOutRule: Rule = ({ design, print }) => {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  return design.fittings.flatMap((fitting): readonly Verdict[] => {
    const sides = fitting.holes.flatMap((hole) => {
      const part = parts.get(hole.part);
      return part && !part.turned ? [{ part, side: nearest(hole, part) }] : [];
    });
    const [first] = sides;
    if (!first) return [];
    const worst = sides.reduce((so, each) => (less(each.side.left, so.side.left) ? each : so), first);
    const { left, axis, high } = worst.side;
    const check = {
      rule: "fitting-breaks-out",
      subject: fitting.id,
      value: toMillimetres(left),
      limit: toMillimetres(LEAST),
      unit: "mm",
      basis: "geometry; the least wood is common practice, no source",
    };
    if (!less(left, LEAST)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = fittingBreaksOut(fitting.at, {
      item: fitting.hardware[0]?.item.kind ?? "",
      part: worst.part.id,
      side: faceOf(axis, high),
      left: left.n <= 0n ? null : print(left),
      least: print(LEAST),
      move: print(subtract(LEAST, left)),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
};

function nearest(hole: Hole, { body }: Part): Side {
  const widest = hole.stages.reduce((so, { diameter }) => (less(so, diameter) ? diameter : so), ZERO);
  const sides = INDICES.filter((axis) => Math.abs(hole.direction[axis]) < 0.5).flatMap((axis): readonly Side[] => [
    { left: subtract(subtract(hole.at[axis], body.low[axis]), half(widest)), axis, high: false },
    { left: subtract(body.high[axis], add(hole.at[axis], half(widest))), axis, high: true },
  ]);
  const least = sides.map(({ left }) => left).reduce(min);
  return sides.find(({ left }) => left === least) as Side;
}
