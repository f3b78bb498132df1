import type { Placement, Plane, Solid } from "../../../geometry/index.ts";
import {
  boxPlanes,
  cut as cutPlane,
  flip,
  intersect,
  isEmpty,
  planeThrough,
  solidBox,
  subtract,
  subtractBox,
  unite,
} from "../../../geometry/index.ts";
import { type Rational, rational, subtract as subtractLength, ZERO } from "../../../units/rational.ts";
import type { Box, BoxKind, Direction, Feature, Hole, Point } from "../../design.ts";
import type { Entry } from "../expand/entry.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, enclosing, INDICES, mirrorBox, mirrorDirection, mirrorPoint, withAxis } from "../space.ts";

/** A cut with a saw or a router: what it takes away. */
export type Cut =
  | {
      readonly kind: "box";
      readonly box: Box;
      /** What is let in lies on whole wood: an edge that is eased stays square along it. */
      readonly square?: boolean;
    }
  /** Everything outside the plane. */
  | ({ readonly kind: "plane" } & CutPlane)
  /** Everything inside all the planes. */
  | { readonly kind: "region"; readonly planes: readonly CutPlane[] };

/** The plane through `point`; the normal points outwards and has whole-number components. */
export interface CutPlane {
  readonly point: Point;
  readonly normal: readonly [bigint, bigint, bigint];
  /** A flat that stands for a curve: the lines between such flats are not drawn. */
  readonly smooth?: boolean;
  /** It takes the sharpness off an edge, and stops before what is let in there. */
  readonly eases?: boolean;
}

/** A part on the bench: its body between shoulders, what stands out of it, and what is cut away, in the order of working. */
export interface Workpiece {
  readonly entry: Entry;
  readonly frame: Frame;
  /** How it will lie in the room; null: as it is. Everything else is in the coordinates of the body before. */
  readonly placement: Placement | null;
  readonly body: Box;
  /** The body lengthened by what is let in over its whole section. */
  readonly grown: Box;
  /** Tenons. */
  readonly tongues: readonly Box[];
  readonly cuts: readonly Cut[];
  /** How many of them its own shapes make: they come first. */
  readonly drawn: number;
  readonly features: readonly Feature[];
  readonly holes: readonly Hole[];
}

/** What the saw must yield: the body with all that stands out of it. */
export const blankOf = (piece: Workpiece): Box => piece.tongues.reduce(enclosing, piece.grown);

export function solidOf(piece: Workpiece): Solid {
  const whole = unite([piece.grown, ...piece.tongues].map((box) => solidBox(box.low, box.high)));
  const seats = piece.cuts.flatMap((cut) => (cut.kind === "box" && cut.square ? [cut.box] : []));
  const solid = piece.cuts.reduce((so, cut) => taken(so, cut, seats), whole);
  const flats = piece.cuts.flatMap((cut) => (cut.kind === "box" ? [] : cut.kind === "plane" ? [cut] : cut.planes));
  const smooth = flats.filter((flat) => flat.smooth).map(planeOf);
  return smooth.length === 0 ? solid : { ...solid, smooth: new Set(smooth.flatMap((flat) => [flat, flip(flat)])) };
}

const planeOf = ({ point, normal }: CutPlane): Plane => planeThrough(point, normal);

function taken(solid: Solid, cut: Cut, seats: readonly Box[]): Solid {
  switch (cut.kind) {
    case "box":
      return subtractBox(solid, cut.box.low, cut.box.high);
    case "plane":
      return cut.eases ? eased(solid, cut, seats) : cutPlane(solid, planeOf(cut));
    case "region":
      return subtract(solid, cut.planes.map(planeOf));
  }
}

/** A flat along an edge, left out along the seats that reach it. */
function eased(solid: Solid, flat: CutPlane, seats: readonly Box[]): Solid {
  const plane = planeOf(flat);
  const axis = INDICES.find((i) => flat.normal[i] === 0n);
  const kept: Solid[] = [];
  let beyond = intersect(solid, [flip(plane)]);
  for (const { low, high } of seats) {
    if (axis === undefined || isEmpty(cutPlane(solidBox(low, high), flip(plane)))) continue;
    const ends = boxPlanes(low, high).filter(({ a, b, c }) => [a, b, c][axis] !== 0);
    kept.push(intersect(beyond, ends));
    beyond = subtract(beyond, ends);
  }
  return unite([cutPlane(solid, plane), ...kept]);
}

/** The plane cut with rational components put to whole numbers. */
export function planeCut(
  point: Point,
  normal: readonly [Rational, Rational, Rational],
  { smooth = false, eases = false }: Pick<CutPlane, "smooth" | "eases"> = {},
): Cut & { kind: "plane" } {
  const scale = normal.reduce((so, { d }) => so * d, 1n);
  const [a, b, c] = normal.map(({ n, d }) => (n * scale) / d) as [bigint, bigint, bigint];
  const divisor = gcd(gcd(a, b), c) || 1n;
  return { kind: "plane", point, normal: [a / divisor, b / divisor, c / divisor], smooth, eases };
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
): Extract<Feature, { readonly kind: BoxKind }> {
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
  const flat = ({ point, normal, smooth, eases }: CutPlane): CutPlane => {
    const [a, b, c] = normal;
    return {
      point: at(point),
      normal: [axis === 0 ? -a : a, axis === 1 ? -b : b, axis === 2 ? -c : c],
      ...(smooth && { smooth }),
      ...(eases && { eases }),
    };
  };
  const mirrored = (feature: Feature): Feature => {
    if ("normal" in feature)
      return { ...feature, origin: at(feature.origin), normal: mirrorDirection(feature.normal, axis) };
    const [along, across, into] = [feature.along, feature.across, feature.into] as const;
    // What runs along the axis keeps pointing up it, so the corner moves to the other end of the run.
    const runs = (d: Direction): boolean => d.every((n, i) => (i === axis) !== (n === 0));
    const moved = runs(along) ? feature.size[0] : runs(across) ? feature.size[1] : ZERO;
    const corner = at(feature.origin);
    const way = (d: Direction): Direction => (runs(d) ? d : mirrorDirection(d, axis));
    return {
      ...feature,
      origin: withAxis(corner, axis, subtractLength(corner[axis], moved)),
      along: way(along),
      across: way(across),
      into: mirrorDirection(into, axis),
    };
  };
  return {
    tongues: shapes.tongues.map((box) => mirrorBox(box, axis, about)),
    cuts: shapes.cuts.map((cut) =>
      cut.kind === "box"
        ? { kind: "box", box: mirrorBox(cut.box, axis, about) }
        : cut.kind === "plane"
          ? { kind: "plane", ...flat(cut) }
          : { kind: "region", planes: cut.planes.map(flat) },
    ),
    features: shapes.features.map(mirrored),
    holes: shapes.holes.map((hole) => ({
      ...hole,
      part,
      at: at(hole.at),
      direction: mirrorDirection(hole.direction, axis),
    })),
  };
}
