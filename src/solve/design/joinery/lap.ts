import { lapDoesNotLap } from "../../../findings/rules/lap-does-not-lap.ts";
import type { Face } from "../../../parse/draft.ts";
import { equal, half } from "../../../units/rational.ts";
import { slab } from "../shapes/shaped.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, common, extent, faceAxis, faceOf, INDICES, isHigh, opposite, unit } from "../space.ts";
import type { Bench, JoineryContext, Joining, Jointed } from "./work.ts";

/** Two crossing parts of one thickness, each losing half of it where they cross. */
export function cutLap(joining: Joining, bench: Bench, context: JoineryContext): Jointed | null {
  const { draft } = joining;
  const [joined, mate] = [bench.piece(joining.join.id), bench.piece(joining.to.id)];
  const shared = INDICES.filter(
    (i) => equal(joined.body.low[i], mate.body.low[i]) && equal(joined.body.high[i], mate.body.high[i]),
  );
  const axis = pickAxis(shared, joining);
  if (joining.touch.kind !== "overlap" || axis === null) {
    context.report(lapDoesNotLap(draft.with.at, { join: joining.join.id, to: joining.to.id }));
    return null;
  }
  const side = sideOf(draft.joinSide?.value, axis);
  const cross = common(joined.body, mate.body);
  const thick = half(extent(cross, axis));
  // The joined part stays whole on its side: it loses the far half, the other part the near one.
  for (const [id, face] of [
    [joining.join.id, opposite(side)],
    [joining.to.id, side],
  ] as const) {
    const box = slab(cross, face, thick);
    const along = INDICES.find((i) => i !== axis) as AxisIndex;
    bench.cut(
      id,
      { kind: "box", box },
      boxFeature("half lap", joining.id, box, { axis, sign: isHigh(face) ? -1 : 1 }, along),
    );
  }
  return { joining, insertion: unit(axis, isHigh(side) ? -1 : 1), gap: { n: 0n, d: 1n } };
}

/** The direction of the common thickness: the one that the named side lies in, else up before deep before across. */
function pickAxis(shared: readonly AxisIndex[], { draft }: Joining): AxisIndex | null {
  const named = draft.joinSide && faceAxis(draft.joinSide.value);
  if (named !== undefined) return shared.includes(named) ? named : null;
  return shared[shared.length - 1] ?? null;
}

const sideOf = (named: Face | undefined, axis: AxisIndex): Face => named ?? (axis === 1 ? "front" : faceOf(axis, true));
