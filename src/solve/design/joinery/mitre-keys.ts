import { splineDoesNotFit } from "../../../findings/rules/spline-does-not-fit.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, min, multiply, rational, subtract, toNumber } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box, Direction } from "../../design.ts";
import { extent, triple, unit, withAxis } from "../space.ts";
import { boxRegion, type Corner, inwards, outerOf, pointAt, regionSolid, sectionPlane } from "./corner.ts";
import { type Bench, type JoineryContext, type Joining, type Loose, measured } from "./work.ts";

/**
 * Keys across the outer edge of a mitre, let in when the glue is dry and trimmed flush: 1/8 in thick, reaching one and a half times the
 * wood along each part, one for every 2 in of the corner (common practice, no source).
 */
export function keysOf(
  joining: Joining,
  corner: Corner,
  bench: Bench,
  context: JoineryContext,
): readonly Loose[] | null {
  const { draft } = joining;
  const { cross, third } = corner;
  const inch = context.units === "inch";
  const [p, q] = [corner.join.axis, corner.to.axis];
  const room = min(extent(cross, p), extent(cross, q));
  const most = multiply(room, rational(2));
  const usual = roundTo(multiply(room, rational(3, 2)), context.precision, "down");
  const reach = measured(draft.deep, min(usual, inch ? inches(2) : millimetres(50)), context);
  const thick = measured(draft.loose?.thick, inch ? inches(1, 8) : millimetres(3), context);
  const tall = extent(cross, third);
  const every = toNumber(tall) / toNumber(inch ? inches(2) : millimetres(50));
  const said = draft.fasteners?.count;
  const count = said ? context.count(said) : Math.min(1000, Math.max(1, Math.round(every)));
  if (!reach || !thick || !count) return null;
  if (less(most, reach) || less(tall, multiply(thick, rational(2 * count)))) {
    context.report(
      splineDoesNotFit(draft.loose?.at ?? draft.with.at, {
        join: joining.join.id,
        to: joining.to.id,
        spline: `${context.print(thick)} × ${context.print(reach)}`,
        room: `${context.print(tall)} × ${context.print(most)}`,
      }),
    );
    return null;
  }
  const [sp, sq] = [inwards(corner, p), inwards(corner, q)];
  const [out, up] = [outerOf(corner, p), outerOf(corner, q)];
  const along = (from: Length, sign: 1 | -1, by: Length): Length => (sign > 0 ? add(from, by) : subtract(from, by));
  const bottom = sectionPlane(corner, pointAt(corner, along(out, sp, reach), up), rational(sp), rational(sq));
  const direction: Direction = triple((i) => (i === p ? sp * Math.SQRT1_2 : i === q ? sq * Math.SQRT1_2 : 0));
  const deep = rational(Math.round(toNumber(reach) * Math.SQRT1_2));
  const item = `key ${context.printItem(thick)} thick, ${context.printItem(reach)} on each side of the corner`;
  return Array.from({ length: count }, (_, k): Loose => {
    const middle = add(cross.low[third], multiply(tall, rational(2 * k + 1, 2 * count)));
    const [low, high] = [subtract(middle, half(thick)), add(middle, half(thick))];
    const square = (from: Length, sign: 1 | -1): readonly [Length, Length] =>
      sign > 0 ? [from, along(from, sign, reach)] : [along(from, sign, reach), from];
    const [u, v] = [square(out, sp), square(up, sq)];
    const box: Box = {
      low: triple((i) => (i === third ? low : i === p ? u[0] : v[0])),
      high: triple((i) => (i === third ? high : i === p ? u[1] : v[1])),
    };
    for (const id of [joining.join.id, joining.to.id])
      bench.cut(
        id,
        { kind: "region", planes: [...boxRegion(box), bottom] },
        {
          kind: "slot",
          for: joining.id,
          inPlace: true,
          origin: withAxis(
            triple((i) =>
              i === p ? along(out, sp, half(reach)) : i === q ? along(up, sq === 1 ? -1 : 1, half(reach)) : low,
            ),
            third,
            low,
          ),
          along: triple((i) => (i === p ? -sp * Math.SQRT1_2 : i === q ? sq * Math.SQRT1_2 : 0)),
          across: unit(third, 1),
          size: [rational(Math.round(toNumber(reach) * Math.SQRT2)), thick, deep],
          into: direction,
        },
      );
    const body = regionSolid(box, [bottom]);
    const from = withAxis(pointAt(corner, out, up), third, middle);
    return { kind: "key", item, body, from, direction, length: deep, thick, travels: false };
  });
}
