import { mortiseBreaksOut } from "../../../findings/rules/mortise-breaks-out.ts";
import { wedgesNeedThrough } from "../../../findings/rules/wedges-need-through.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, divide, equal, less, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, extent, unit } from "../space.ts";
import type { Section } from "./section.ts";
import { boxOf, sectionOf, shouldersOf, usualLength } from "./tenon-section.ts";
import { type Bench, type JoineryContext, type Joining, type Jointed, measured } from "./work.ts";

/** How much deeper than its tenon a mortise is, so that the shoulder closes: 1/16 in or 1.5 mm (common practice, no source). */
export const deeperOf = ({ draft }: Joining, context: JoineryContext): Length | null =>
  measured(draft.mortiseDeeper, context.units === "inch" ? inches(1, 16) : millimetres(3, 2), context);

/** A tenon at the end of the joined part and its mortise; right through the other part, haunched or drawbored where that is said. */
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
  const [tenon, mortise] = [boxOf(section, joining, bench, long), boxOf(section, joining, bench, deep)];
  bench.addTongue(joining.join.id, tenon, boxFeature("tenon", joining.id, tenon, into, section.broad));
  bench.cut(
    joining.to.id,
    { kind: "box", box: mortise },
    boxFeature("mortise", joining.id, mortise, into, section.broad),
  );
  if (method === "haunched tenon" || draft.tenon?.haunch) haunch(joining, section, long, bench, context);
  const pegged = method === "drawbored tenon" || draft.peg ? { pegged: { section, long } } : {};
  return () => ({ joining, insertion: unit(axis, sign), gap: ZERO, ...pegged });
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
