import { slidingTailTooThin } from "../../../findings/rules/sliding-tail-too-thin.ts";
import { stopNotAlongHousing } from "../../../findings/rules/stop-not-along-housing.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  add,
  compare,
  half,
  less,
  multiply,
  type Rational,
  rational,
  subtract,
  ZERO,
} from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { blankOf, boxFeature, type CutPlane, planeCut } from "../shapes/workpiece.ts";
import {
  type AxisIndex,
  extent,
  faceAxis,
  faceOf,
  isHigh,
  opposite,
  otherAxes,
  setFace,
  triple,
  unit,
} from "../space.ts";
import { boxRegion } from "./corner.ts";
import { growHousing, type Housing, stop, tongueOf } from "./housing.ts";
import type { Bench, Craft, JoineryContext, Jointed } from "./work.ts";

/**
 * Sliding dovetail: the end or edge of the joined part is a tail, as thick as the part at its end and thinner at the shoulder, in a housing
 * of the same section. It goes in along the housing, from an end that is open. 1 in 8 (common practice, no source).
 */
export const beginSlidingDovetail: Craft = (joining, bench, context) => {
  const housing = growHousing(joining, bench, context);
  if (!housing) return null;
  const { draft, join } = joining;
  const [thin, run] = directions(housing, bench);
  if (draft.stopped && faceAxis(draft.stopped.from) !== run) {
    const ends = [faceOf(run, false), faceOf(run, true)] as const;
    context.report(stopNotAlongHousing(draft.stopped.at, { join: join.id, from: draft.stopped.from, ends }));
    return null;
  }
  const slope = rational(100, Math.max(1, Math.round((draft.slope?.value ?? 8) * 100)));
  const lean = multiply(housing.deep, slope);
  const thick = extent(bench.piece(join.id).body, thin);
  const neck = subtract(thick, add(lean, lean));
  if (less(neck, half(thick))) {
    context.report(
      slidingTailTooThin(draft.slope?.at ?? draft.deep?.at ?? draft.with.at, {
        join: join.id,
        thick: context.print(thick),
        neck: compare(neck, ZERO) > 0 ? context.print(neck) : null,
      }),
    );
    return null;
  }
  return () => cutSliding({ housing, thin, run, lean, slope }, bench, context);
};

interface Sliding {
  readonly housing: Housing;
  readonly thin: AxisIndex;
  /** The direction of the housing, in which the tail slides. */
  readonly run: AxisIndex;
  /** What the tail loses on each side from its end to its shoulder. */
  readonly lean: Length;
  readonly slope: Rational;
}

function directions({ joining, face }: Housing, bench: Bench): readonly [AxisIndex, AxisIndex] {
  const { body } = bench.piece(joining.join.id);
  const [a, b] = otherAxes(faceAxis(face));
  return less(extent(body, a), extent(body, b)) ? [a, b] : [b, a];
}

function cutSliding(sliding: Sliding, bench: Bench, context: JoineryContext): Jointed {
  const { housing, thin, run, lean } = sliding;
  const { joining, face, play } = housing;
  const { draft, join, to } = joining;
  const axis = faceAxis(face);
  const into = { axis, sign: isHigh(face) ? (1 as const) : (-1 as const) };
  const tail = stop(housing, tongueOf(housing, bench), bench, context);
  // What is sawn off beside the neck, told as one: out of the tail's own box, beyond its sloping sides.
  const sides = [false, true].map((high) => [...boxRegion(tail), flank(sliding, tail, high, -1)]);
  bench.cutAll(
    join.id,
    sides.map((planes) => ({ kind: "region", planes })),
    { ...boxFeature("tail", joining.id, tail, into, run), lean },
  );
  const blank = blankOf(bench.piece(to.id));
  const open = openEnd(sliding, tail, blank);
  const loose = setFace(
    setFace(tail, faceOf(thin, false), subtract(tail.low[thin], half(play))),
    faceOf(thin, true),
    add(tail.high[thin], half(play)),
  );
  let room = setFace(loose, open, (isHigh(open) ? blank.high : blank.low)[run]);
  const crumb = context.units === "inch" ? inches(1, 4) : millimetres(6);
  const far = opposite(open);
  const left = isHigh(far) ? subtract(blank.high[run], room.high[run]) : subtract(room.low[run], blank.low[run]);
  // A crumb that would be left standing at the other end is taken as well, unless the housing is stopped there.
  if (!draft.stopped && less(left, crumb)) room = setFace(room, far, (isHigh(far) ? blank.high : blank.low)[run]);
  const planes = [...boxRegion(room), flank(sliding, room, false, 1), flank(sliding, room, true, 1)];
  bench.cut(
    to.id,
    { kind: "region", planes },
    { ...boxFeature("dovetail housing", joining.id, room, into, run), lean },
  );
  return { joining, insertion: unit(run, isHigh(open) ? -1 : 1), gap: ZERO };
}

/** The end at which the tail goes in: away from the stop, else where less wood stands beyond it, else the back or the top. */
function openEnd({ housing, run }: Sliding, tail: Box, blank: Box) {
  const { stopped } = housing.joining.draft;
  if (stopped) return opposite(stopped.from);
  const [low, high] = [subtract(tail.low[run], blank.low[run]), subtract(blank.high[run], tail.high[run])];
  return faceOf(run, !less(low, high));
}

/** The sloping side of the section in `box`, the outward normal away from the tail (1) or into it (-1). */
function flank({ housing, thin, slope }: Sliding, box: Box, high: boolean, sign: 1 | -1): CutPlane {
  const axis = faceAxis(housing.face);
  const goes = isHigh(housing.face);
  // On the edge of the deep end the section has its full thickness.
  const edge = triple((i) =>
    i === axis ? (goes ? box.high : box.low)[axis] : i === thin ? (high ? box.high : box.low)[thin] : box.low[i],
  );
  // Outwards, and back towards the shoulder.
  const normal = triple((i) =>
    i === thin
      ? rational((high ? 1 : -1) * sign)
      : i === axis
        ? multiply(slope, rational((goes ? -1 : 1) * sign))
        : ZERO,
  );
  const { point, normal: whole } = planeCut(edge, normal);
  return { point, normal: whole };
}
