import { mitreNeedsACorner } from "../../../findings/rules/mitre-needs-a-corner.ts";
import { ZERO } from "../../../units/rational.ts";
import type { Direction } from "../../design.ts";
import type { CutPlane } from "../shapes/workpiece.ts";
import { type Corner, cornerOf, mitrePlane } from "./corner.ts";
import { keysOf } from "./mitre-keys.ts";
import { splineOf } from "./mitre-spline.ts";
import type { Bench, Craft, JoineryContext, Joining } from "./work.ts";

/** Both parts cut on the plane through the inner and the outer edge of their corner; `length` is to the long points. */
export const beginMitre: Craft = (joining, bench, context) => {
  const corner = cornerIn(joining, bench, context);
  if (!corner) return null;
  return () => {
    const plane = mitrePlane(corner);
    cutOn(plane, joining.join.id, joining.id, bench);
    cutOn(opposed(plane), joining.to.id, joining.id, bench);
    const method = joining.draft.with.value;
    const filling =
      method === "splined mitre"
        ? splineOf(joining, corner, bench, context)
        : method === "keyed mitre"
          ? keysOf(joining, corner, bench, context)
          : [];
    return filling && { joining, insertion: null, gap: ZERO, loose: filling };
  };
};

function cornerIn({ draft, join, to }: Joining, bench: Bench, context: JoineryContext): Corner | null {
  const corner = cornerOf(bench.piece(join.id).body, bench.piece(to.id).body);
  if (!corner) context.report(mitreNeedsACorner(draft.with.at, { join: join.id, to: to.id, method: draft.with.value }));
  return corner;
}

const opposed = ({ point, normal: [a, b, c] }: CutPlane): CutPlane => ({ point, normal: [-a, -b, -c] });

function cutOn(plane: CutPlane, id: string, joint: string, bench: Bench): void {
  const normal = plane.normal.map(Number) as unknown as Direction;
  bench.cut(id, { kind: "plane", ...plane }, { kind: "mitre", for: joint, origin: plane.point, normal });
}
