import { tenonTooBig } from "../../../findings/rules/tenon-too-big.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  absolute,
  add,
  compare,
  divide,
  half,
  less,
  max,
  min,
  multiply,
  rational,
  subtract,
} from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box } from "../../design.ts";
import { type AxisIndex, extent, faceAxis, isHigh, middle, otherAxes, triple } from "../space.ts";
import { besideCuts } from "./beside-cuts.ts";
import type { Range, Section } from "./section.ts";
import { type Bench, type JoineryContext, type Joining, measured } from "./work.ts";

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

/** The two directions of a joint's face: the one in which the joined part is thinner, and the other. */
export function facing({ join, touch }: Joining, bench: Bench): { thin: AxisIndex; broad: AxisIndex } | null {
  if (touch.kind !== "faces") return null;
  const { body } = bench.piece(join.id);
  const [a, b] = otherAxes(touch.axis);
  const thin = less(extent(body, b), extent(body, a)) ? b : a;
  return { thin, broad: thin === a ? b : a };
}

/** The section as the maker said, else of the usual thickness between the shoulders given. Null: reported. */
export function sectionOf(
  joining: Joining,
  bench: Bench,
  context: JoineryContext,
  shoulders: Range | null,
): Section | null {
  const sides = facing(joining, bench);
  const { draft, touch } = joining;
  const piece = bench.piece(joining.join.id);
  const { body } = piece;
  if (!sides || !shoulders || touch.kind !== "faces") return null;
  const { thin, broad } = sides;
  const usual = usualThickness(extent(body, thin), context.units === "inch");
  const thick = measured(draft.tenon?.thick ?? draft.loose?.thick, usual, context);
  const cheek = thick && cheekOf(joining, thin, thick, bench, context);
  if (!thick || !cheek) return null;
  const room = besideCuts(piece, touch, { thin, broad, cheek }, ["rabbet"]);
  const said = draft.tenon;
  const low = max(add(body.low[broad], shoulders.low), said?.shoulderBelow ? body.low[broad] : room.low);
  const high = min(subtract(body.high[broad], shoulders.high), said?.shoulderAbove ? body.high[broad] : room.high);
  const fits = less(low, high) && compare(cheek.low, body.low[thin]) >= 0 && compare(cheek.high, body.high[thin]) <= 0;
  if (fits) return { thin, broad, cheek, wide: { low, high } };
  context.report(
    tenonTooBig(draft.tenon?.at ?? draft.with.at, {
      part: joining.join.id,
      tenon: `${context.print(thick)} × ${context.print(subtract(high, low))}`,
      end: `${context.print(extent(body, thin))} × ${context.print(extent(body, broad))}`,
    }),
  );
  return null;
}

/** The box that a section fills from the joined part's face to `reach` beyond it; `back` lets it begin inside that part. */
export function boxOf(
  { thin, cheek, wide }: Section,
  { join, touch }: Joining,
  bench: Bench,
  reach: Length,
  back: Length = rational(0),
): Box {
  const { axis, sign } = touch as Extract<Joining["touch"], { kind: "faces" }>;
  const { body } = bench.piece(join.id);
  const [start, end] =
    sign > 0
      ? [subtract(body.high[axis], back), add(body.high[axis], reach)]
      : [subtract(body.low[axis], reach), add(body.low[axis], back)];
  const side = (which: "low" | "high") =>
    triple((i) => (i === axis ? (which === "low" ? start : end) : i === thin ? cheek[which] : wide[which]));
  return { low: side("low"), high: side("high") };
}

/** A third of the wood, to the nearest cutter. */
export const usualThickness = (wood: Length, inch: boolean): Length => {
  const third = divide(wood, rational(3));
  return CUTTERS[inch ? "inch" : "mm"].reduce((best, size) =>
    less(absolute(subtract(size, third)), absolute(subtract(best, third))) ? size : best,
  );
};

/** 1 in, or two thirds of what the other part has (common practice, no source). */
export const usualLength = (room: Length, inch: boolean, precision: Length): Length =>
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
export function shouldersOf(joining: Joining, bench: Bench, context: JoineryContext): Range | null {
  const sides = facing(joining, bench);
  if (!sides) return null;
  const { draft, join, to } = joining;
  const { broad } = sides;
  const inch = context.units === "inch";
  const usual = inch ? inches(3, 16) : millimetres(5);
  const atEnd = inch ? inches(1, 2) : millimetres(12);
  const [a, b] = [bench.piece(join.id).body, bench.piece(to.id).body];
  const near = (space: Length): Length => (less(space, atEnd) ? atEnd : usual);
  const low = measured(draft.tenon?.shoulderBelow, near(subtract(a.low[broad], b.low[broad])), context);
  const high = measured(draft.tenon?.shoulderAbove, near(subtract(b.high[broad], a.high[broad])), context);
  return low && high && { low, high };
}
