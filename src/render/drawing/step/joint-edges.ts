/** The edges by which a joint is known in a picture: of mortise and tenon, of groove and dado, of what sticks out, of hardware. */
import { realEdges, type Stage, stretch } from "../../../geometry/picture/index.ts";
import type { Edge, Solid, Vec } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { BuiltJoint, BuiltPart } from "../../../solve/build.ts";
import type { Feature, Point } from "../../../solve/design.ts";
import { TOLERANCE, toNumber } from "../../../units/index.ts";
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
  const touching = insertion === null ? [] : contact.flatMap(({ polygons }) => polygons.map(around));
  const boxes = cuts.length > 0 ? cuts : touching;
  return boxes.length === 0
    ? []
    : realEdges(solid).filter(
        ({ from, to }) => boxes.some((box) => holds(box, from) && holds(box, to)) && !isOutline(part, from, to),
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

export const edgesOf = (solid: Solid): readonly Edge[] => realEdges(solid);

interface Around {
  readonly low: Vec;
  readonly high: Vec;
}

function boxOf({ origin, along, across, into, size }: Extract<Feature, { readonly into: unknown }>): Around {
  const sides = [along, across, into].map((way, i) => times(way, toNumber(size[i] as Point[0])));
  const from: Vec = [toNumber(origin[0]), toNumber(origin[1]), toNumber(origin[2])];
  return around([from, sides.reduce(plus, from)]);
}

function around(points: readonly Vec[]): Around {
  const bound = (of: (...values: number[]) => number, by: number): Vec => [
    of(...points.map((p) => p[0])) + by,
    of(...points.map((p) => p[1])) + by,
    of(...points.map((p) => p[2])) + by,
  ];
  return { low: bound(Math.min, -TOLERANCE), high: bound(Math.max, TOLERANCE) };
}

const holds = ({ low, high }: Around, p: Vec): boolean =>
  ([0, 1, 2] as const).every((i) => p[i] >= low[i] && p[i] <= high[i]);
