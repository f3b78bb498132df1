import { type Placement, placed, turned } from "../../../geometry/index.ts";
import type { Face, PlaneDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import {
  ceil,
  divide,
  floor,
  max,
  min,
  multiply,
  negate,
  rational,
  subtract,
  sum,
  toNumber,
} from "../../../units/rational.ts";
import type { Point } from "../../design.ts";
import { type AxisIndex, faceOf, INDICES, otherAxes } from "../space.ts";

/** A plane and the direction, square to it, in which the part lies that ends on it. */
export interface LocalPlane {
  readonly point: Point;
  readonly normal: Point;
}

/** An end of a part that lies on the plane of a face. */
export interface End {
  readonly axis: AxisIndex;
  readonly high: boolean;
  readonly target: PlaneDraft;
  /** How far the body has to reach, the longest of its edges counted. */
  readonly reach: () => Length | null;
  /** The plane in the coordinates of the body, with the normal out of the part. */
  readonly plane: () => LocalPlane | null;
}

export interface EndContext {
  readonly position: (face: Face) => Length | null;
  /** From the room to the body as it lay before it was turned; undefined where it is not. */
  readonly back: () => Placement | null | undefined;
}

/** Closer to lying along the part than about 6 degrees is no end. */
const STEEPEST = 0.1;

/** Which end a plane makes. `back` turns directions of the room into those of the body; null where the plane lies along the part. */
export function endOf(
  target: PlaneDraft,
  plane: LocalPlane,
  back: Placement | undefined,
  length: AxisIndex | null,
  context: EndContext,
): End | null {
  const inside = back ? turned(back, plane.normal) : plane.normal;
  const lengths = inside.map((n) => Math.abs(toNumber(n)));
  const size = Math.sqrt(lengths.reduce((so, n) => so + n * n, 0));
  const dominant = INDICES.reduce<AxisIndex>(
    (best, i) => ((lengths[i] as number) > (lengths[best] as number) ? i : best),
    0,
  );
  const axis = length ?? dominant;
  if ((lengths[axis] as number) < STEEPEST * size) return null;
  const high = inside[axis].n < 0n;
  const local = (): LocalPlane | null => {
    const placement = context.back();
    if (placement === null) return null;
    const point = placement ? placed(placement, plane.point) : plane.point;
    return { point, normal: [negate(inside[0]), negate(inside[1]), negate(inside[2])] };
  };
  const reach = (): Length | null => {
    const own = local();
    const [a, b] = otherAxes(axis);
    const [a0, a1, b0, b1] = [faceOf(a, false), faceOf(a, true), faceOf(b, false), faceOf(b, true)].map(
      context.position,
    );
    if (!own || !a0 || !a1 || !b0 || !b1) return null;
    const { point, normal } = own;
    const level = sum(INDICES.map((i) => multiply(normal[i], point[i])));
    const stops = [a0, a1].flatMap((x) =>
      [b0, b1].map((y) =>
        divide(subtract(subtract(level, multiply(normal[a], x)), multiply(normal[b], y)), normal[axis]),
      ),
    );
    const furthest = stops.reduce(high ? max : min);
    const square = normal[a].n === 0n && normal[b].n === 0n;
    return square ? furthest : rational(high ? ceil(furthest) : floor(furthest));
  };
  return { axis, high, target, reach, plane: local };
}
