import { fingersDoNotFit } from "../../../findings/rules/fingers-do-not-fit.ts";
import { mitreNeedsACorner } from "../../../findings/rules/mitre-needs-a-corner.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, divide, floor, half, less, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { extent, withAxis } from "../space.ts";
import { cornerOf } from "./corner.ts";
import { type Craft, measured } from "./work.ts";

/**
 * Fingers of one width along the corner, both ends alike: an odd number of them, the outer two wider or narrower by what is left over.
 * The joined part has the outer ones. As wide as the wood is thick when nothing is said (common practice, no source).
 */
export const beginFingers: Craft = (joining, bench, context) => {
  const { draft, join, to } = joining;
  const corner = cornerOf(bench.piece(join.id).body, bench.piece(to.id).body);
  if (!corner) {
    context.report(mitreNeedsACorner(draft.with.at, { join: join.id, to: to.id, method: draft.with.value }));
    return null;
  }
  const { cross, third } = corner;
  const tall = extent(cross, third);
  const finger = measured(draft.finger, extent(cross, corner.join.axis), context);
  if (!finger) return null;
  const stops = less(ZERO, finger) ? fingerStops(tall, finger) : null;
  const least = context.units === "inch" ? inches(1, 8) : millimetres(3);
  if (!stops || less(finger, least)) {
    context.report(
      fingersDoNotFit(draft.finger?.at ?? draft.with.at, {
        join: join.id,
        to: to.id,
        finger: context.print(finger),
        tall: context.print(tall),
        least: context.print(least),
        most: context.print(divide(tall, rational(2))),
      }),
    );
    return null;
  }
  return () => {
    for (const [k, [from, upTo]] of stops.entries()) {
      const box: Box = {
        low: withAxis(cross.low, third, add(cross.low[third], from)),
        high: withAxis(cross.high, third, add(cross.low[third], upTo)),
      };
      // What is a finger of one part is a socket of the other.
      const [id, end] = k % 2 === 0 ? [to.id, corner.to] : [join.id, corner.join];
      const into = { axis: end.axis, sign: end.high ? (-1 as const) : (1 as const) };
      bench.cut(id, { kind: "box", box }, boxFeature("socket", joining.id, box, into, third));
    }
    return { joining, insertion: null, gap: ZERO };
  };
};

/**
 * From and to of each finger, measured from the low end. The outer two share what is left over, never less than half a finger each;
 * null where there is no room for three.
 */
export function fingerStops(tall: Length, finger: Length): readonly (readonly [Length, Length])[] | null {
  // Inner fingers: an odd number n, so that half a finger or more is left at each end.
  const inner = Number(floor(divide(subtract(tall, finger), finger)));
  const n = inner % 2 === 1 ? inner : inner - 1;
  if (n < 1 || n > 999) return null;
  const outer = half(subtract(tall, multiply(finger, rational(n))));
  const cut = (k: number): Length =>
    k === 0 ? ZERO : k === n + 2 ? tall : add(outer, multiply(finger, rational(k - 1)));
  return Array.from({ length: n + 2 }, (_, k) => [cut(k), cut(k + 1)] as const);
}
