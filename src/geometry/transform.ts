/** Exact movements that keep the axes: shifts, mirror images and turns by quarters. */
import { multiply, type Rational, rational, toNumber, ZERO } from "../units/rational.ts";
import { pieceOf } from "./piece.ts";
import { plane } from "./plane.ts";
import { solidOf } from "./solid.ts";
import type { Contact, Piece, Plane, Point, Solid, Vec, Vertex } from "./types.ts";
import { homogeneous } from "./vertex.ts";

type Index = 0 | 1 | 2;

/** New coordinate i is `sign[i]` times old coordinate `from[i]`, plus `shift[i]`. */
export interface Movement {
  readonly from: readonly [Index, Index, Index];
  readonly sign: readonly [1 | -1, 1 | -1, 1 | -1];
  readonly shift: Point;
}

export const IDENTITY: Movement = { from: [0, 1, 2], sign: [1, 1, 1], shift: [ZERO, ZERO, ZERO] };

/** True where the movement turns a left hand into a right hand. */
export function isMirror({ from, sign }: Movement): boolean {
  const even = from[1] === (from[0] + 1) % 3;
  return even !== sign[0] * sign[1] * sign[2] > 0;
}

export const translate = (solid: Solid, by: Point): Solid => move(solid, { ...IDENTITY, shift: by });

/** The mirror image in the plane where the coordinate along `axis` is `about`. */
export const mirror = (solid: Solid, axis: Index, about: Rational): Solid => move(solid, reflectionIn(axis, about));

function reflectionIn(axis: Index, about: Rational): Movement {
  const twice = multiply(about, rational(2));
  const at = <T>(there: T, elsewhere: T): [T, T, T] => [
    axis === 0 ? there : elsewhere,
    axis === 1 ? there : elsewhere,
    axis === 2 ? there : elsewhere,
  ];
  return { from: [0, 1, 2], sign: at<1 | -1>(-1, 1), shift: at(twice, ZERO) };
}

export function move(solid: Solid, movement: Movement): Solid {
  const vertices = new Map<Vertex, Vertex>();
  const planes = new Map<Plane, Plane>();
  const { common, shift } = overOne(movement);
  const mirrored = isMirror(movement);
  const vertex = (v: Vertex): Vertex => {
    const old = permuted([v.X, v.Y, v.Z], movement);
    return homogeneous(
      old[0] * common + shift[0] * v.W,
      old[1] * common + shift[1] * v.W,
      old[2] * common + shift[2] * v.W,
      common * v.W,
    );
  };
  const turned = (p: Plane): Plane => movedPlane(p, movement);
  const piece = (old: Piece): Piece =>
    pieceOf(
      old.faces.map((face) => {
        const loop = face.vertices.map((v) => memo(vertices, v, vertex));
        return { plane: memo(planes, face.plane, turned), vertices: mirrored ? loop.reverse() : loop };
      }),
    );
  const moved = solidOf(solid.pieces.map(piece));
  if (!solid.smooth) return moved;
  return { ...moved, smooth: new Set([...solid.smooth].map((each) => memo(planes, each, turned))) };
}

/** A contact as a mirror shows it. */
export function mirroredContact(contact: Contact, axis: Index, about: Rational): Contact {
  const reflection = reflectionIn(axis, about);
  const normal = turnVec(contact.normal, reflection);
  return {
    ...contact,
    centre: movePoint(contact.centre, reflection),
    normal,
    plane: movedPlane(contact.plane, reflection),
    polygons: contact.polygons.map((polygon) => polygon.map((at) => movePoint(at, reflection)).reverse()),
  };
}

function movedPlane(p: Plane, movement: Movement): Plane {
  const { common, shift } = overOne(movement);
  const [A, B, C] = permuted([p.A, p.B, p.C], movement);
  const along = A * shift[0] + B * shift[1] + C * shift[2];
  return plane(A * common, B * common, C * common, p.D * common + along);
}

/** The shift over one denominator. */
function overOne({ shift }: Movement): { readonly common: bigint; readonly shift: [bigint, bigint, bigint] } {
  const common = shift[0].d * shift[1].d * shift[2].d;
  return { common, shift: shift.map((r) => (r.n * common) / r.d) as [bigint, bigint, bigint] };
}

/** Where a point in doubles goes. */
export function movePoint(at: Vec, { from, sign, shift }: Movement): Vec {
  const to = (i: Index): number => sign[i] * at[from[i]] + toNumber(shift[i]);
  return [to(0), to(1), to(2)];
}

/** Where a direction goes. */
export const turnVec = (v: Vec, { from, sign }: Movement): Vec => [
  sign[0] * v[from[0]],
  sign[1] * v[from[1]],
  sign[2] * v[from[2]],
];

const permuted = (of: readonly [bigint, bigint, bigint], { from, sign }: Movement): [bigint, bigint, bigint] => {
  const at = (i: Index): bigint => (sign[i] === 1 ? of[from[i]] : -of[from[i]]);
  return [at(0), at(1), at(2)];
};

function memo<K, V>(map: Map<K, V>, key: K, make: (key: K) => V): V {
  let value = map.get(key);
  if (value === undefined) {
    value = make(key);
    map.set(key, value);
  }
  return value;
}
