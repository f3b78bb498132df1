/** What may strike or be struck, and where it is on its way. In doubles: this only judges. */
import { circlePoint, cylinder, type Hull, hullOf, type Solid, type Vec } from "../../../geometry/index.ts";
import { cross, dot, minus, plus, times } from "../../../geometry/vec.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Fastener, Hardware, Part, Pose } from "../../design.ts";
import { solidOfHull } from "../order/pegs.ts";

/** A part with the heads that stand out of it, or a piece of hardware. */
export interface Body {
  readonly id: string;
  readonly solids: readonly Solid[];
}

export function bodiesOf(
  parts: readonly Part[],
  hardware: readonly Hardware[],
  fasteners: readonly Fastener[],
): readonly Body[] {
  return [
    ...parts.map(({ id, solid }) => ({ id, solids: [solid, ...headsOf(id, fasteners)] })),
    ...hardware.map(({ id, solid }) => ({ id, solids: [solid] })),
  ];
}

const headsOf = (part: string, fasteners: readonly Fastener[]): readonly Solid[] =>
  fasteners.flatMap(({ head, direction, through }) => {
    const high = toNumber(head.height);
    if (head.seat !== "proud" || through[0] !== part || high <= 0) return [];
    const at = head.at.map(toNumber) as unknown as Vec;
    return [solidOfHull(cylinder(at, times(direction, -1), toNumber(head.diameter) / 2, high))];
  });

/** A rigid movement of points, and of directions alone. */
export interface Move {
  readonly point: (at: Vec) => Vec;
  readonly way: (way: Vec) => Vec;
}

export function moveOf({ rotate: { about, degrees }, shift }: Pose): Move {
  const way = turnAbout(about[1], degrees);
  return { way, point: (at) => plus(plus(about[0], way(minus(at, about[0]))), shift) };
}

export function backOf({ rotate: { about, degrees }, shift }: Pose): Move {
  const way = turnAbout(about[1], -degrees);
  return { way, point: (at) => plus(about[0], way(minus(minus(at, shift), about[0]))) };
}

export const after = (first: Move, then: Move): Move => ({
  point: (at) => then.point(first.point(at)),
  way: (way) => then.way(first.way(way)),
});

/** Right-handed about a unit vector: v cos + (k × v) sin + k (k · v)(1 − cos). */
function turnAbout(line: Vec, degrees: number): (v: Vec) => Vec {
  const [cos, sin] = circlePoint(degrees, 360);
  return (v) => plus(plus(times(v, cos), times(cross(line, v), sin)), times(line, dot(line, v) * (1 - cos)));
}

/** The pieces of a solid, moved. */
export const movedHulls = (solid: Solid, { point, way }: Move): readonly Hull[] =>
  solid.pieces.map((piece) => {
    const { planes, vertices } = hullOf(piece);
    const moved = vertices.map(point);
    return {
      vertices: moved,
      planes: planes.map(({ normal, d }) => {
        const turned = way(normal);
        // A point of the plane, moved: the one nearest to the origin.
        return { normal: turned, d: dot(turned, point(times(normal, d))) };
      }),
    };
  });
