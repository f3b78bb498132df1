import type { Solid } from "../../../geometry/index.ts";
import { cut as cutPlane, planeThrough, solidBox, subtract, subtractBox, unite } from "../../../geometry/index.ts";
import { type Rational, rational } from "../../../units/rational.ts";
import type { Box, BoxKind, Direction, Feature, Hole, Point } from "../../design.ts";
import type { Entry } from "../expand/entry.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, enclosing, mirrorBox, mirrorDirection, mirrorPoint } from "../space.ts";

/** A cut with a saw or a router: what it takes away. */
export type Cut =
  | { readonly kind: "box"; readonly box: Box }
  /** Everything inside all of these planes: the slot of a spline, the socket of a dovetail. */
  | { readonly kind: "region"; readonly planes: readonly SlopingPlane[] }
  /** Everything outside the plane through `point`; the normal points outwards and has whole-number components. */
  | ({ readonly kind: "plane" } & SlopingPlane);

/** A plane through a point; the normal points outwards and has whole-number components. */
export interface SlopingPlane {
  readonly point: Point;
  readonly normal: readonly [bigint, bigint, bigint];
}

/** A part on the bench: its body between shoulders, what stands out of it, and what is cut away, in the order of working. */
export interface Workpiece {
  readonly entry: Entry;
  readonly frame: Frame;
  readonly body: Box;
  /** The body lengthened by what is let in over its whole section. */
  readonly grown: Box;
  /** Tenons. */
  readonly tongues: readonly Box[];
  readonly cuts: readonly Cut[];
  readonly features: readonly Feature[];
  readonly holes: readonly Hole[];
}

/** What the saw must yield: the body with all that stands out of it. */
export const blankOf = (piece: Workpiece): Box => piece.tongues.reduce(enclosing, piece.grown);

export function solidOf(piece: Workpiece): Solid {
  const whole = unite([piece.grown, ...piece.tongues].map((box) => solidBox(box.low, box.high)));
  return piece.cuts.reduce(applyCut, whole);
}

function applyCut(solid: Solid, cut: Cut): Solid {
  if (cut.kind === "box") return subtractBox(solid, cut.box.low, cut.box.high);
  if (cut.kind === "plane") return cutPlane(solid, planeThrough(cut.point, cut.normal));
  return subtract(
    solid,
    cut.planes.map(({ point, normal }) => planeThrough(point, normal)),
  );
}

/** The plane cut with rational components put to whole numbers. */
export function planeCut(point: Point, normal: readonly [Rational, Rational, Rational]): Cut & { kind: "plane" } {
  const scale = normal.reduce((so, { d }) => so * d, 1n);
  const [a, b, c] = normal.map(({ n, d }) => (n * scale) / d) as [bigint, bigint, bigint];
  const divisor = gcd(gcd(a, b), c) || 1n;
  return { kind: "plane", point, normal: [a / divisor, b / divisor, c / divisor] };
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

/**
 * A feature cut as a box into a face. `into` points from that face into the wood; `along` is the direction of its run.
 */
export function boxFeature(
  kind: BoxKind,
  joint: string | null,
  box: Box,
  into: { readonly axis: AxisIndex; readonly sign: 1 | -1 },
  along: AxisIndex,
): Extract<Feature, { readonly size: unknown }> {
  const across = (3 - into.axis - along) as AxisIndex;
  const size = (axis: AxisIndex): Rational => {
    const [low, high] = [box.low[axis], box.high[axis]];
    return rational(high.n * low.d - low.n * high.d, high.d * low.d);
  };
  const corner = into.sign > 0 ? box.low[into.axis] : box.high[into.axis];
  const at = (axis: AxisIndex) => (axis === into.axis ? corner : box.low[axis]);
  const unit = (axis: AxisIndex, sign = 1): Direction => [
    axis === 0 ? sign : 0,
    axis === 1 ? sign : 0,
    axis === 2 ? sign : 0,
  ];
  return {
    kind,
    for: joint,
    origin: [at(0), at(1), at(2)],
    along: unit(along),
    across: unit(across),
    size: [size(along), size(across), size(into.axis)],
    into: unit(into.axis, into.sign),
  };
}

/** The reflection of a workpiece's own shapes in the plane coordinate = about. */
export function mirrorShapes(
  shapes: Pick<Workpiece, "cuts" | "features" | "holes" | "tongues">,
  axis: AxisIndex,
  about: Rational,
  part: string,
): Pick<Workpiece, "cuts" | "features" | "holes" | "tongues"> {
  const at = (point: Point) => mirrorPoint(point, axis, about);
  const mirrored = (feature: Feature): Feature => {
    if ("normal" in feature)
      return { ...feature, origin: at(feature.origin), normal: mirrorDirection(feature.normal, axis) };
    const into = mirrorDirection(feature.into, axis);
    const runs = ([feature.along, feature.across] as const).map((d) => d[axis] !== 0);
    // `along` and `across` keep pointing up their axes, so the corner moves to the other end of the run.
    const moved = runs[0] ? feature.size[0] : runs[1] ? feature.size[1] : null;
    const origin = at(feature.origin);
    const back = moved
      ? (origin.map((value, i) =>
          i === axis ? rational(value.n * moved.d - moved.n * value.d, value.d * moved.d) : value,
        ) as unknown as Point)
      : origin;
    return { ...feature, origin: back, into };
  };
  return {
    tongues: shapes.tongues.map((box) => mirrorBox(box, axis, about)),
    cuts: shapes.cuts.map((cut): Cut => {
      if (cut.kind === "box") return { kind: "box", box: mirrorBox(cut.box, axis, about) };
      const turned = ({ point, normal }: SlopingPlane): SlopingPlane => ({
        point: at(point),
        normal: normal.map((n, i) => (i === axis ? -n : n)) as unknown as [bigint, bigint, bigint],
      });
      return cut.kind === "plane"
        ? { kind: "plane", ...turned(cut) }
        : { kind: "region", planes: cut.planes.map(turned) };
    }),
    features: shapes.features.map(mirrored),
    holes: shapes.holes.map((hole) => ({
      ...hole,
      part,
      at: at(hole.at),
      direction: mirrorDirection(hole.direction, axis),
    })),
  };
}
