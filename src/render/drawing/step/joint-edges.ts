/** The edges by which a joint is known in a picture: of mortise and tenon, of groove and dado, of what sticks out, of hardware. */
import { bounds } from "../../../geometry/convex.ts";
import { realEdges, type Stage, stretch } from "../../../geometry/picture/index.ts";
import type { Edge, Vec } from "../../../geometry/types.ts";
import { plus } from "../../../geometry/vec.ts";
import type { BuiltJoint, BuiltPart } from "../../../solve/build.ts";
import { TOLERANCE, toNumber } from "../../../units/index.ts";
import { boxOf, inBox } from "../feature-box.ts";
import type { Fit } from "../fit.ts";
import { onPage } from "../ink.ts";
import type { Segment } from "../plate.ts";

/**
 * Those of a part that lie in what is cut, or stands out, for a joint; where nothing tells that, those where it touches the other. The edges
 * of the plain board tell nothing.
 */
export function edgesFor({ id, contact, insertion }: BuiltJoint, part: BuiltPart): readonly Edge[] {
  const { solid, features } = part;
  const cuts = features.flatMap((feature) => (feature.for === id && "into" in feature ? [boxOf(feature)] : []));
  const touching = insertion === null ? [] : contact.flatMap(({ polygons }) => polygons.map(bounds));
  const boxes = cuts.length > 0 ? cuts : touching;
  return boxes.length === 0
    ? []
    : realEdges(solid).filter(
        ({ from, to }) => boxes.some((box) => inBox(box, from) && inBox(box, to)) && !isOutline(part, from, to),
      );
}

/** Between two faces of the board as it is square. */
function isOutline({ body, turned }: BuiltPart, from: Vec, to: Vec): boolean {
  if (turned) return false;
  const near = (i: 0 | 1 | 2): boolean =>
    [body.low[i], body.high[i]].some((at) => [from, to].every((p) => Math.abs(p[i] - toNumber(at)) <= TOLERANCE));
  return ([0, 1, 2] as const).filter(near).length > 1;
}

/** What is seen of them on the page. */
export function seenOf(edges: readonly Edge[], shift: Vec, stage: Stage, fit: Fit): readonly Segment[] {
  return edges.flatMap(({ from, to }) => {
    const [p, q] = [plus(from, shift), plus(to, shift)];
    return onPage(
      fit,
      stage.look(p, q).seen.map((run) => stretch(stage.view, p, q, run)),
    );
  });
}
