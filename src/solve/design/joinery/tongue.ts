import { housingTooDeep } from "../../../findings/rules/housing-too-deep.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, max, min, multiply, rational, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box } from "../../design.ts";
import { blankOf, boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, extent, unit, withAxis } from "../space.ts";
import type { Section } from "./section.ts";
import { deeperOf } from "./tenon.ts";
import { boxOf, facing, sectionOf } from "./tenon-section.ts";
import { type Bench, type Craft, type JoineryContext, type Joining, measured } from "./work.ts";

/** Tongue and groove: a tongue along the whole edge, 1/4 in long (common practice, no source), in a groove that is a little deeper. */
export const beginTongue: Craft = (joining, bench, context) => {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const section = sectionOf(joining, bench, context, { low: ZERO, high: ZERO });
  const long = measured(
    draft.tenon?.long ?? draft.deep,
    context.units === "inch" ? inches(1, 4) : millimetres(6),
    context,
  );
  const deeper = deeperOf(joining, context);
  if (!section || !long || !deeper || !leavesWood(joining, add(long, deeper), bench, context)) return null;
  standOut(joining, section, long, bench);
  return () => {
    cutGroove(joining, section, add(long, deeper), bench, ZERO);
    return { joining, insertion: unit(touch.axis, touch.sign), gap: ZERO };
  };
};

/**
 * Breadboard end: a long tongue across the end of a top, with shoulders, in a groove that is longer than the tongue by what the top moves: the
 * share of its width that its species moves in its place, and never less than 1 1/2 %, a year of 4 % of moisture at 0.0037 for each.
 */
export const beginBreadboard: Craft = (joining, bench, context) => {
  const { draft, touch } = joining;
  const sides = facing(joining, bench);
  if (touch.kind !== "faces" || !sides) return null;
  const inch = context.units === "inch";
  const { body } = bench.piece(joining.join.id);
  const wide = extent(body, sides.broad);
  const shoulder = (formula: typeof draft.deep) => measured(formula, inch ? inches(1) : millimetres(25), context);
  const [low, high] = [shoulder(draft.tenon?.shoulderBelow), shoulder(draft.tenon?.shoulderAbove)];
  const section = sectionOf(joining, bench, context, low && high && { low, high });
  const room = extent(bench.piece(joining.to.id).body, touch.axis);
  const usual = min(
    inch ? inches(1) : millimetres(25),
    roundTo(multiply(room, rational(2, 3)), context.precision, "down"),
  );
  const long = measured(draft.tenon?.long, usual, context);
  const deeper = deeperOf(joining, context);
  const share = max(context.movesBy(joining.join.id) ?? ZERO, rational(3, 200));
  const moves = measured(draft.play, roundTo(multiply(wide, share), context.precision, "up"), context);
  if (!section || !long || !deeper || !moves || !leavesWood(joining, add(long, deeper), bench, context)) return null;
  standOut(joining, section, long, bench);
  return () => {
    cutGroove(joining, section, add(long, deeper), bench, moves);
    return { joining, insertion: unit(touch.axis, touch.sign), gap: ZERO, pegged: { section, long, slotted: moves } };
  };
};

function standOut(joining: Joining, section: Section, long: Length, bench: Bench): void {
  const { axis, sign } = joining.touch as Extract<Joining["touch"], { kind: "faces" }>;
  const box = boxOf(section, joining, bench, long);
  bench.addTongue(joining.join.id, box, boxFeature("tongue", joining.id, box, { axis, sign }, section.broad));
}

/** The groove: right through where the tongue is as long as the other part, else longer than the tongue by `more` at each end. */
function cutGroove(joining: Joining, section: Section, deep: Length, bench: Bench, more: Length): void {
  const { axis, sign } = joining.touch as Extract<Joining["touch"], { kind: "faces" }>;
  const { broad } = section;
  const mate = bench.piece(joining.to.id);
  const tongue = boxOf(section, joining, bench, deep);
  const covers =
    compare(tongue.low[broad], mate.body.low[broad]) <= 0 && compare(tongue.high[broad], mate.body.high[broad]) >= 0;
  const blank = blankOf(mate);
  const within = (i: AxisIndex, at: Length): Length => max(blank.low[i], min(blank.high[i], at));
  const [from, upTo] = covers
    ? [blank.low[broad], blank.high[broad]]
    : [add(tongue.low[broad], multiply(more, rational(-1))), add(tongue.high[broad], more)];
  const box: Box = {
    low: withAxis(tongue.low, broad, within(broad, from)),
    high: withAxis(tongue.high, broad, within(broad, upTo)),
  };
  bench.cut(joining.to.id, { kind: "box", box }, boxFeature("groove", joining.id, box, { axis, sign }, broad));
}

function leavesWood({ draft, to, touch }: Joining, deep: Length, bench: Bench, context: JoineryContext): boolean {
  const { axis } = touch as Extract<Joining["touch"], { kind: "faces" }>;
  const thick = extent(bench.piece(to.id).body, axis);
  if (compare(deep, thick) < 0) return true;
  const at = draft.tenon?.long?.at ?? draft.deep?.at ?? draft.with.at;
  context.report(housingTooDeep(at, { part: to.id, deep: context.print(deep), thick: context.print(thick) }));
  return false;
}
