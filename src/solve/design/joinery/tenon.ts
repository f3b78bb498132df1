import { mortiseBreaksOut } from "../../../findings/rules/mortise-breaks-out.ts";
import { tenonTooBig } from "../../../findings/rules/tenon-too-big.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  absolute,
  add,
  compare,
  divide,
  equal,
  half,
  less,
  min,
  multiply,
  rational,
  subtract,
} from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box } from "../../design.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, extent, faceAxis, isHigh, middle, otherAxes, triple, unit } from "../space.ts";
import { type Bench, type JoineryContext, type Joining, type Jointed, measured } from "./work.ts";

/** Bits and chisels that exist (common practice, no source). */
const CUTTERS = {
  inch: [inches(3, 16), inches(1, 4), inches(5, 16), inches(3, 8), inches(1, 2), inches(5, 8), inches(3, 4)],
  mm: [
    millimetres(5),
    millimetres(6),
    millimetres(8),
    millimetres(10),
    millimetres(12),
    millimetres(15),
    millimetres(18),
  ],
} as const;

/** A tenon at the end of the joined part and its mortise, deeper so that the shoulder closes. */
export function cutTenon(joining: Joining, bench: Bench, context: JoineryContext): Jointed | null {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const { axis, sign } = touch;
  const joined = bench.piece(joining.join.id);
  const mate = bench.piece(joining.to.id);
  const inch = context.units === "inch";
  const [a, b] = otherAxes(axis);
  const thin = less(extent(joined.body, b), extent(joined.body, a)) ? b : a;
  const broad = thin === a ? b : a;
  const room = extent(mate.body, axis);

  const thick = measured(draft.tenon?.thick, usualThickness(extent(joined.body, thin), inch), context);
  const long = measured(draft.tenon?.long, usualLength(room, inch, context.precision), context);
  const deeper = measured(draft.mortiseDeeper, inch ? inches(1, 16) : millimetres(3, 2), context);
  const shoulders = shouldersOf(joining, bench, broad, context);
  if (!thick || !long || !deeper || !shoulders) return null;
  const cheek = cheekOf(joining, thin, thick, bench, context);
  if (!cheek) return null;

  const [from, to] = [add(joined.body.low[broad], shoulders.low), subtract(joined.body.high[broad], shoulders.high)];
  const fits =
    less(from, to) &&
    compare(cheek.low, joined.body.low[thin]) >= 0 &&
    compare(cheek.high, joined.body.high[thin]) <= 0;
  if (!fits) {
    context.report(
      tenonTooBig(draft.tenon?.at ?? draft.with.at, {
        part: joining.join.id,
        tenon: `${context.print(thick)} × ${context.print(subtract(to, from))}`,
        end: `${context.print(extent(joined.body, thin))} × ${context.print(extent(joined.body, broad))}`,
      }),
    );
    return null;
  }
  const through = equal(long, room);
  const deep = through ? long : add(long, deeper);
  if (!through && compare(deep, room) >= 0) {
    context.report(
      mortiseBreaksOut(draft.tenon?.long?.at ?? draft.with.at, {
        part: joining.to.id,
        deep: context.print(deep),
        thick: context.print(room),
      }),
    );
    return null;
  }
  const start = sign > 0 ? joined.body.high[axis] : joined.body.low[axis];
  const box = (reach: Length): Box => {
    const end = sign > 0 ? add(start, reach) : subtract(start, reach);
    const along = sign > 0 ? { low: start, high: end } : { low: end, high: start };
    const pick = (side: "low" | "high") =>
      triple((i) => (i === axis ? along[side] : i === thin ? cheek[side] : side === "low" ? from : to));
    return { low: pick("low"), high: pick("high") };
  };
  const into = { axis, sign };
  bench.addTongue(joining.join.id, box(long), boxFeature("tenon", joining.id, box(long), into, broad));
  bench.cut(joining.to.id, { kind: "box", box: box(deep) }, boxFeature("mortise", joining.id, box(deep), into, broad));
  return { joining, insertion: unit(axis, sign), gap: rational(0) };
}

/** A third of the wood, to the nearest cutter. */
const usualThickness = (wood: Length, inch: boolean): Length => {
  const third = divide(wood, rational(3));
  return CUTTERS[inch ? "inch" : "mm"].reduce((best, size) =>
    less(absolute(subtract(size, third)), absolute(subtract(best, third))) ? size : best,
  );
};

/** 1 in, or two thirds of what the other part has (common practice, no source). */
const usualLength = (room: Length, inch: boolean, precision: Length): Length =>
  min(inch ? inches(1) : millimetres(25), roundTo(multiply(room, rational(2, 3)), precision, "down"));

/** Where the tenon lies in the thickness: centred, or a cheek at a distance from a face. */
function cheekOf(
  { draft, join }: Joining,
  thin: AxisIndex,
  thick: Length,
  bench: Bench,
  context: JoineryContext,
): { low: Length; high: Length } | null {
  const { body } = bench.piece(join.id);
  const inFrom = draft.tenon?.inFrom;
  if (!inFrom || faceAxis(inFrom.face) !== thin) {
    const centre = middle(body, thin);
    return { low: subtract(centre, half(thick)), high: add(centre, half(thick)) };
  }
  const distance = context.measure(inFrom.distance);
  if (!distance) return null;
  if (isHigh(inFrom.face)) {
    const high = subtract(body.high[thin], distance);
    return { low: subtract(high, thick), high };
  }
  const low = add(body.low[thin], distance);
  return { low, high: add(low, thick) };
}

/** 3/16 in each side, 1/2 in where the mortise would come near the other part's end (common practice, no source). */
function shouldersOf({ draft, join, to }: Joining, bench: Bench, broad: AxisIndex, context: JoineryContext) {
  const inch = context.units === "inch";
  const usual = inch ? inches(3, 16) : millimetres(5);
  const atEnd = inch ? inches(1, 2) : millimetres(12);
  const [a, b] = [bench.piece(join.id).body, bench.piece(to.id).body];
  const near = (space: Length): Length => (less(space, atEnd) ? atEnd : usual);
  const low = measured(draft.tenon?.shoulderBelow, near(subtract(a.low[broad], b.low[broad])), context);
  const high = measured(draft.tenon?.shoulderAbove, near(subtract(b.high[broad], a.high[broad])), context);
  return low && high && { low, high };
}
