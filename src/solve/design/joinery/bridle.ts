import { bridleNeedsAnEnd } from "../../../findings/rules/bridle-needs-an-end.ts";
import { add, equal, half, less, subtract, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, common, extent, INDICES, thirdAxis, withAxis } from "../space.ts";
import { usualThickness } from "./tenon-section.ts";
import { type Craft, measured } from "./work.ts";

/**
 * Two parts of one thickness that cross, at the end of the other part at least: that end is slotted, the joined part loses its two
 * cheeks, so that a third of the wood fills the slot.
 */
export const beginBridle: Craft = (joining, bench, context) => {
  const { draft } = joining;
  const [joined, mate] = [bench.piece(joining.join.id).body, bench.piece(joining.to.id).body];
  const cross = common(joined, mate);
  const same = (body: Box, i: AxisIndex) => equal(body.low[i], cross.low[i]) && equal(body.high[i], cross.high[i]);
  const flush = INDICES.filter((i) => same(joined, i) && same(mate, i));
  // The slot opens at an end of the other part, along its run.
  const ends = flush.flatMap((thin) =>
    INDICES.flatMap((run) => {
      const [low, high] = [equal(mate.low[run], cross.low[run]), equal(mate.high[run], cross.high[run])];
      const side = thirdAxis(thin, run);
      return run !== thin && low !== high && same(joined, run) && same(mate, side) ? [{ thin, run, side, high }] : [];
    }),
  );
  const end = ends.at(-1);
  if (joining.touch.kind !== "overlap" || !end) {
    context.report(bridleNeedsAnEnd(draft.with.at, { join: joining.join.id, to: joining.to.id }));
    return null;
  }
  const { thin, run, side, high } = end;
  const wood = extent(cross, thin);
  const thick = measured(draft.tenon?.thick, usualThickness(wood, context.units === "inch"), context);
  if (!thick) return null;
  if (!less(thick, wood) || !less(ZERO, thick)) {
    context.report(bridleNeedsAnEnd(draft.tenon?.at ?? draft.with.at, { join: joining.join.id, to: joining.to.id }));
    return null;
  }
  const cheek = half(subtract(wood, thick));
  const [from, upTo] = [add(cross.low[thin], cheek), subtract(cross.high[thin], cheek)];
  const part = (low: typeof from, top: typeof from): Box => ({
    low: withAxis(cross.low, thin, low),
    high: withAxis(cross.high, thin, top),
  });
  return () => {
    const below = part(cross.low[thin], from);
    const above = part(upTo, cross.high[thin]);
    const slot = part(from, upTo);
    bench.cut(
      joining.join.id,
      { kind: "box", box: below },
      boxFeature("cheek", joining.id, below, { axis: thin, sign: 1 }, side),
    );
    bench.cut(
      joining.join.id,
      { kind: "box", box: above },
      boxFeature("cheek", joining.id, above, { axis: thin, sign: -1 }, side),
    );
    bench.cut(
      joining.to.id,
      { kind: "box", box: slot },
      boxFeature("bridle", joining.id, slot, { axis: run, sign: high ? -1 : 1 }, side),
    );
    return { joining, insertion: null, gap: ZERO };
  };
};
