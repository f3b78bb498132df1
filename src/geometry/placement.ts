/** Exact turns by any angle: rotations with rational entries, and a shift. Near the angle asked for to 1e-12. */
import { add, multiply, type Rational, rational, subtract, ZERO } from "../units/rational.ts";
import { circlePoint } from "./angle.ts";
import { gcd } from "./gcd.ts";
import { pieceOf } from "./piece.ts";
import { plane } from "./plane.ts";
import { solidOf } from "./solid.ts";
import type { Piece, Plane, Point, Solid, Vec, Vertex } from "./types.ts";
import { homogeneous } from "./vertex.ts";

type Row = readonly [bigint, bigint, bigint];

/** New point = rows · old point / by + shift. The rows over `by` are square to each other and of length 1, exactly. */
export interface Placement {
  readonly rows: readonly [Row, Row, Row];
  readonly by: bigint;
  readonly shift: Point;
}

const ORIGIN: Point = [ZERO, ZERO, ZERO];

/** The rotation of a quaternion in whole numbers. */
function rotation(w: bigint, x: bigint, y: bigint, z: bigint): Placement {
  const rows: readonly [Row, Row, Row] = [
    [w * w + x * x - y * y - z * z, 2n * (x * y - w * z), 2n * (x * z + w * y)],
    [2n * (x * y + w * z), w * w - x * x + y * y - z * z, 2n * (y * z - w * x)],
    [2n * (x * z - w * y), 2n * (y * z + w * x), w * w - x * x - y * y + z * z],
  ];
  return lowest(rows, w * w + x * x + y * y + z * z, ORIGIN);
}

function lowest(rows: Placement["rows"], by: bigint, shift: Point): Placement {
  const g = rows.flat().reduce(gcd, by);
  const row = ([a, b, c]: Row): Row => [a / g, b / g, c / g];
  return { rows: [row(rows[0]), row(rows[1]), row(rows[2])], by: by / g, shift };
}

/** Right-handed about an axis through the origin, by the angle of which the half has this cosine and sine. */
function aboutAxis(axis: 0 | 1 | 2, cos: number, sin: number): Placement {
  const swapped = Math.abs(sin) > Math.abs(cos);
  const [p, q] = fraction(swapped ? cos / sin : sin / cos);
  const [w, v] = swapped ? [p, q] : [q, p];
  return rotation(w, axis === 0 ? v : 0n, axis === 1 ? v : 0n, axis === 2 ? v : 0n);
}

/** Right-handed about an axis through the origin. Quarter turns are exact. */
export const turnAbout = (axis: 0 | 1 | 2, degrees: Rational): Placement =>
  aboutAxis(axis, ...circlePoint(Number(degrees.n), 720 * Number(degrees.d)));

/**
 * Turns the direction `axis` (its other way for −1) into `to`, not zero and no more than 90 degrees away. What lies is first raised or lowered and then swung round, so
 * that what was level across it stays level; what stands is tilted straight to where it goes.
 */
export function turnInto(axis: 0 | 1 | 2, sign: 1 | -1, to: Vec): Placement {
  const size = Math.sqrt(to[0] * to[0] + to[1] * to[1] + to[2] * to[2]);
  const [x, y, z] = [to[0] / size, to[1] / size, to[2] / size];
  if (axis === 2) {
    const [w, a, b] = [1 + sign * z, -sign * y, sign * x];
    if (a === 0) return aboutAxis(1, w, b);
    if (b === 0) return aboutAxis(0, w, a);
    const scale = FINE / Math.max(Math.abs(w), Math.abs(a), Math.abs(b));
    const whole = (value: number): bigint => BigInt(Math.round(value * scale));
    return rotation(whole(w), whole(a), whole(b), 0n);
  }
  const level = Math.sqrt(x * x + y * y);
  const raised = aboutAxis(axis === 0 ? 1 : 0, 1 + level, (axis === 0 ? -sign : sign) * z);
  if (level === 0) return raised;
  const [along, aside] = axis === 0 ? [sign * x, sign * y] : [sign * y, -sign * x];
  return compose(aboutAxis(2, level + along, aside), raised);
}
const FINE = 2 ** 42;

/** A fraction near x, |x| ≤ 1, to 1e-13, with as few digits as it takes: the terms of its continued fraction. */
function fraction(x: number): readonly [bigint, bigint] {
  let [p, q, lastP, lastQ] = [1n, 0n, 0n, 1n];
  let rest = x;
  for (;;) {
    const whole = Math.floor(rest);
    [p, lastP] = [BigInt(whole) * p + lastP, p];
    [q, lastQ] = [BigInt(whole) * q + lastQ, q];
    if (rest === whole || Math.abs(Number(p) / Number(q) - x) <= 1e-13) return [p, q];
    rest = 1 / (rest - whole);
  }
}

const dotRow = (row: Row, [x, y, z]: readonly [Rational, Rational, Rational]): Rational =>
  add(add(multiply(rational(row[0]), x), multiply(rational(row[1]), y)), multiply(rational(row[2]), z));

type Triple = readonly [Rational, Rational, Rational];
const each = <T>(make: (i: 0 | 1 | 2) => T): readonly [T, T, T] => [make(0), make(1), make(2)];
const columns = ({ rows }: Placement): Placement["rows"] => each((i) => [rows[0][i], rows[1][i], rows[2][i]]);

/** Where an exact direction goes. */
export const turned = ({ rows, by }: Placement, v: Triple): Triple =>
  each((i) => multiply(dotRow(rows[i], v), rational(1n, by)));
/** Where an exact point goes. */
export const placed = (placement: Placement, p: Point): Point => {
  const at = turned(placement, p);
  return each((i) => add(at[i], placement.shift[i]));
};
/** Where a direction in doubles goes. */
export const turnedVec = ({ rows, by }: Placement, v: Vec): Vec =>
  each((i) => (v[0] * Number(rows[i][0]) + v[1] * Number(rows[i][1]) + v[2] * Number(rows[i][2])) / Number(by));

/** First one, then `after` it the other. */
export function compose(after: Placement, first: Placement): Placement {
  const across = columns(first);
  const rows = each((i): Row => each((j) => after.rows[i].reduce((so, a, k) => so + a * (across[j][k] ?? 0n), 0n)));
  return lowest(rows, after.by * first.by, placed(after, first.shift));
}

export function inverse(placement: Placement): Placement {
  const back: Placement = { rows: columns(placement), by: placement.by, shift: ORIGIN };
  const shift = turned(back, placement.shift);
  return { ...back, shift: each((i) => subtract(ZERO, shift[i])) };
}

/** The same turn about a point that stays where it is. */
export function aboutPoint(turn: Placement, at: Point): Placement {
  const moved = turned(turn, at);
  return { ...turn, shift: each((i) => subtract(at[i], moved[i])) };
}

/** What a mirror in the plane coordinate = about makes of a placement: the mirror image of a body, placed by it, is the image of the placed body. */
export function mirroredPlacement(placement: Placement, axis: 0 | 1 | 2, about: Rational): Placement {
  const flip = (i: number): bigint => (i === axis ? -1n : 1n);
  const rows = each((i): Row => each((j) => flip(i) * flip(j) * placement.rows[i][j]));
  const twice = multiply(about, rational(2));
  const image = (p: Point): Point => each((i) => (i === axis ? subtract(twice, p[i]) : p[i]));
  const at = image(placed(placement, image(ORIGIN)));
  return { rows, by: placement.by, shift: at };
}

/** Where a plane goes. */
export function placedPlane({ rows, by, shift }: Placement, p: Plane): Plane {
  const common = shift[0].d * shift[1].d * shift[2].d;
  const normal = rows.map((row) => row[0] * p.A + row[1] * p.B + row[2] * p.C) as unknown as Row;
  const along = normal.reduce((so, n, i) => {
    const s = shift[i as 0 | 1 | 2];
    return so + n * ((s.n * common) / s.d);
  }, 0n);
  return plane(normal[0] * common, normal[1] * common, normal[2] * common, by * p.D * common + along);
}

/** A solid placed, exact: planes that were one plane are one plane again. */
export function placedSolid(solid: Solid, placement: Placement): Solid {
  const { rows, by, shift } = placement;
  const common = shift[0].d * shift[1].d * shift[2].d;
  const moved = shift.map((s) => ((s.n * common) / s.d) * by) as unknown as Row;
  const vertices = new Map<Vertex, Vertex>();
  const planes = new Map<Plane, Plane>();
  const vertex = (v: Vertex): Vertex =>
    kept(vertices, v, () => {
      const at = each((i) => (rows[i][0] * v.X + rows[i][1] * v.Y + rows[i][2] * v.Z) * common + moved[i] * v.W);
      return homogeneous(at[0], at[1], at[2], by * common * v.W);
    });
  const plane = (p: Plane): Plane => kept(planes, p, () => placedPlane(placement, p));
  const piece = ({ faces }: Piece): Piece =>
    pieceOf(faces.map((face) => ({ plane: plane(face.plane), vertices: face.vertices.map(vertex) })));
  const result = solidOf(solid.pieces.map(piece));
  return solid.smooth ? { ...result, smooth: new Set([...solid.smooth].map(plane)) } : result;
}

function kept<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}
