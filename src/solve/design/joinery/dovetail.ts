import { dovetailDoesNotFit } from "../../../findings/rules/dovetail-does-not-fit.ts";
import { mitreNeedsACorner } from "../../../findings/rules/mitre-needs-a-corner.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, divide, half, less, max, multiply, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Box, Feature } from "../../design.ts";
import { boxFeature, type CutPlane, planeCut } from "../shapes/workpiece.ts";
import { extent, triple, unit, withAxis } from "../space.ts";
import { boxRegion, type Corner, cornerOf, innerOf, inwards } from "./corner.ts";
import { type Bench, type Craft, type JoineryContext, type Joining, measured } from "./work.ts";

/** Places along the corner, from its low end. */
interface Span {
  readonly low: Length;
  readonly high: Length;
}
interface Tails {
  readonly slope: Length;
  /** The slope over the whole thickness. */
  readonly lean: Length;
  /** Each tail where it is narrow, at the inner edge, and where it is wide, at its end. */
  readonly narrow: readonly Span[];
  readonly wide: readonly Span[];
}

/**
 * Tails on the joined part, pins on the other, half a pin at each end. Where the joined part stops short within the other, the dovetail
 * is half-blind. One tail for every three thicknesses, pins half as wide as the wood is thick, 1 in 8 (common practice, no source).
 */
export const beginDovetail: Craft = (joining, bench, context) => {
  const { draft, join, to } = joining;
  const corner = cornerOf(bench.piece(join.id).body, bench.piece(to.id).body, true);
  if (!corner) {
    context.report(mitreNeedsACorner(draft.with.at, { join: join.id, to: to.id, method: draft.with.value }));
    return null;
  }
  const tails = tailsOf(joining, corner, context);
  return (
    tails &&
    (() => {
      cutTails(joining, corner, tails, bench);
      const way = unit(corner.to.axis, inwards(corner, corner.to.axis));
      return { joining, insertion: way, gap: ZERO };
    })
  );
};

function tailsOf({ draft, join, to }: Joining, corner: Corner, context: JoineryContext): Tails | null {
  const { cross, third } = corner;
  const inch = context.units === "inch";
  const deep = extent(cross, corner.join.axis);
  const tall = extent(cross, third);
  const usual = Math.min(1000, Math.max(1, Math.round(toNumber(tall) / (3 * toNumber(deep)))));
  const n = draft.tails ? context.count(draft.tails) : usual;
  const least = inch ? inches(1, 8) : millimetres(3);
  const pin = measured(draft.pin, max(half(deep), least), context);
  if (n === null || !pin) return null;
  const steep = Math.max(1, Math.round((draft.slope?.value ?? 8) * 100));
  const slope = rational(100, steep);
  const lean = multiply(deep, slope);
  const pitch = divide(tall, rational(n));
  // At its end a tail leaves `pin` to the next; at the inner edge it is narrower by the slope on both sides.
  const base = subtract(subtract(pitch, pin), multiply(lean, rational(2)));
  if (less(base, least) || less(half(pin), half(least)) || less(deep, least)) {
    context.report(
      dovetailDoesNotFit(draft.tails?.at ?? draft.with.at, {
        join: join.id,
        to: to.id,
        tails: n,
        base: toNumber(base) > 0 ? context.print(base) : null,
        pin: context.print(pin),
        thick: context.print(deep),
        tall: context.print(tall),
        least: context.print(least),
      }),
    );
    return null;
  }
  const spans = (inset: Length): readonly Span[] =>
    Array.from({ length: n }, (_, k) => ({
      low: add(add(cross.low[third], multiply(pitch, rational(k))), inset),
      high: subtract(add(cross.low[third], multiply(pitch, rational(k + 1))), inset),
    }));
  return { slope, lean, wide: spans(half(pin)), narrow: spans(add(half(pin), lean)) };
}

function cutTails(joining: Joining, corner: Corner, { slope, lean, wide, narrow }: Tails, bench: Bench): void {
  const { cross, third } = corner;
  const inside = boxRegion(cross);
  // Sloping sides of a span: out of the region between two of its edges.
  const side = (at: Length, end: "low" | "high", sign: 1 | -1): CutPlane => {
    const p = corner.join.axis;
    const inner = triple((i) => (i === p ? innerOf(corner, p) : i === third ? at : cross.low[i]));
    // A tail grows towards the end: its upper side rises outwards.
    const up = end === "high" ? 1 : -1;
    const normal = triple((i) =>
      i === third ? rational(up * sign) : i === p ? multiply(slope, rational(sign * inwards(corner, p))) : ZERO,
    );
    const { point, normal: whole } = planeCut(inner, normal);
    return { point, normal: whole };
  };
  const { join, to } = joining;
  const bounds = (low: Length, high: Length): Box => ({
    low: withAxis(cross.low, third, low),
    high: withAxis(cross.high, third, high),
  });
  const feature = (own: typeof corner.join, box: Box): Feature => ({
    ...boxFeature("socket", joining.id, box, { axis: own.axis, sign: own.high ? -1 : 1 }, third),
    lean,
  });
  for (const [k, { low, high }] of narrow.entries()) {
    const planes = [...inside, side(low, "low", 1), side(high, "high", 1)];
    const { low: from, high: upTo } = wide[k] as Span;
    bench.cut(to.id, { kind: "region", planes }, feature(corner.to, bounds(from, upTo)));
  }
  // Pins are what the tails leave: between two of them, and half a pin at each end.
  for (let k = 0; k <= narrow.length; k += 1) {
    const [before, after] = [narrow[k - 1], narrow[k]];
    const planes = [
      ...inside,
      ...(before ? [side(before.high, "high", -1)] : []),
      ...(after ? [side(after.low, "low", -1)] : []),
    ];
    const box = bounds(before?.high ?? cross.low[third], after?.low ?? cross.high[third]);
    bench.cut(join.id, { kind: "region", planes }, feature(corner.join, box));
  }
}
