import { mortiseBreaksOut } from "../../../findings/rules/mortise-breaks-out.ts";
import { wedgesNeedThrough } from "../../../findings/rules/wedges-need-through.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, divide, equal, less, max, min, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box } from "../../design.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, extent, unit } from "../space.ts";
import { besideCuts } from "./beside-cuts.ts";
import type { Range, Section } from "./section.ts";
import { boxOf, sectionOf, shouldersOf, usualLength } from "./tenon-section.ts";
import { type Bench, type JoineryContext, type Joining, type Jointed, measured } from "./work.ts";

/** How much deeper than its tenon a mortise is, so that the shoulder closes: 1/16 in or 1.5 mm (common practice, no source). */
export const deeperOf = ({ draft }: Joining, context: JoineryContext): Length | null =>
  measured(draft.mortiseDeeper, context.units === "inch" ? inches(1, 16) : millimetres(3, 2), context);

/**
 * A tenon at the end of the joined part and its mortise; right through the other part, haunched or drawbored where that is said. It is begun
 * as wide as its shoulders let it be, and ends beside the grooves of its own part when they are cut.
 */
export function beginTenon(joining: Joining, bench: Bench, context: JoineryContext): (() => Jointed) | null {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const { axis, sign } = touch;
  const mate = bench.piece(joining.to.id);
  const method = draft.with.value;
  const room = extent(mate.body, axis);
  const usual = method === "through tenon" ? room : usualLength(room, context.units === "inch", context.precision);
  const long = measured(draft.tenon?.long, usual, context);
  const deeper = deeperOf(joining, context);
  const shoulders = shouldersOf(joining, bench, context);
  const section = sectionOf(joining, bench, context, shoulders);
  if (!long || !deeper || !section || !shoulders) return null;
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
  if (draft.tenon?.wedges?.value && !through)
    context.report(
      wedgesNeedThrough(draft.tenon.wedges.at, {
        part: joining.join.id,
        long: context.print(long),
        thick: context.print(room),
      }),
    );
  const into = { axis, sign };
  const box = (within: Section, reach: Length) => boxOf(within, joining, bench, reach);
  const told = (kind: "tenon" | "mortise", of: Box) => boxFeature(kind, joining.id, of, into, section.broad);
  const [tenon, mortise] = [box(section, long), box(section, deep)];
  const [asTenon, asMortise] = [told("tenon", tenon), told("mortise", mortise)];
  bench.addTongue(joining.join.id, tenon, asTenon);
  bench.cut(joining.to.id, { kind: "box", box: mortise }, asMortise);
  if (method === "haunched tenon" || draft.tenon?.haunch) haunch(joining, section, long, bench, context);
  return () => {
    const left = { ...section, wide: besideGrooves(joining, section, bench) };
    const [shorter, room] = [box(left, long), box(left, deep)];
    bench.changeTongue(joining.join.id, asTenon, [tenon, shorter], told("tenon", shorter));
    bench.changeCut(joining.to.id, asMortise, [mortise, room], told("mortise", room));
    const pegged = method === "drawbored tenon" || draft.peg ? { pegged: { section: left, long } } : {};
    return { joining, insertion: unit(axis, sign), gap: ZERO, ...pegged };
  };
}

/**
 * Its cheeks would stand as fins beside a groove that runs out over them: it ends where the groove does. A shoulder that is said stays where a
 * groove leaves some of the cheeks.
 */
function besideGrooves({ draft, join, touch }: Joining, section: Section, bench: Bench): Range {
  const { wide } = section;
  if (touch.kind !== "faces") return wide;
  const room = (said: unknown): Range =>
    besideCuts(bench.piece(join.id), touch, section, ["rabbet", "groove"], said ? "wholly" : "in part");
  const low = max(wide.low, room(draft.tenon?.shoulderBelow).low);
  const high = min(wide.high, room(draft.tenon?.shoulderAbove).high);
  return less(low, high) ? { low, high } : wide;
}

/** The shoulder nearer to the other part's end is filled by a short stub, whose room is open at that end where the two are flush. */
function haunch(joining: Joining, section: Section, long: Length, bench: Bench, context: JoineryContext): void {
  const { axis, sign } = joining.touch as Extract<Joining["touch"], { kind: "faces" }>;
  const { broad, wide } = section;
  const { body } = bench.piece(joining.join.id);
  const third = roundTo(divide(long, rational(3)), context.precision);
  const reach = measured(joining.draft.tenon?.haunch, third, context);
  if (!reach) return;
  const side = endSide(joining, broad, bench);
  const stub: Section = {
    ...section,
    wide: side === "high" ? { low: wide.high, high: body.high[broad] } : { low: body.low[broad], high: wide.low },
  };
  if (!less(stub.wide.low, stub.wide.high) || !less(ZERO, reach)) return;
  const box = boxOf(stub, joining, bench, reach);
  const into = { axis, sign };
  bench.addTongue(joining.join.id, box, boxFeature("haunch", joining.id, box, into, broad));
  bench.cut(joining.to.id, { kind: "box", box }, boxFeature("notch", joining.id, box, into, broad));
}

/** The side on which the joined part is nearer to an end of the other. */
function endSide({ join, to }: Joining, broad: AxisIndex, bench: Bench): "low" | "high" {
  const [a, b] = [bench.piece(join.id).body, bench.piece(to.id).body];
  return less(subtract(a.low[broad], b.low[broad]), subtract(b.high[broad], a.high[broad])) ? "low" : "high";
}
