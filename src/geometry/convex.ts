/** Convex bodies in doubles, as the judgements need them: corners, and the directions in which two bodies can be parted. */
import { loopOf } from "./polygon.ts";
import type { Hull, Piece, PieceFace, Vec } from "./types.ts";
import { cross, dot, minus, norm, plus, times, unit } from "./vec.ts";
import { position } from "./vertex.ts";

export interface Bounds {
  readonly low: Vec;
  readonly high: Vec;
}

export interface Convex extends Bounds {
  readonly points: readonly Vec[];
  /** Unit normals of the faces, one of each pair of opposite ones. */
  readonly normals: readonly Vec[];
  /** Unit directions of the edges, one of each pair of opposite ones. */
  readonly edges: readonly Vec[];
  /** A box square to the axes: its bounds say all. */
  readonly upright: boolean;
}

const ofPieces = new WeakMap<Piece, Convex>();
const ofHulls = new WeakMap<Hull, Convex>();
const boundsOfHulls = new WeakMap<Hull, Bounds>();

/** Outward unit normal of a face. */
export const normalOf = ({ plane: { a, b, c, norm: size } }: PieceFace): Vec => [a / size, b / size, c / size];

export function convexOfPiece(piece: Piece): Convex {
  let convex = ofPieces.get(piece);
  if (!convex) {
    const normals = distinct(piece.faces.map(normalOf));
    const points = piece.vertices.map(position);
    const edges = distinct(
      piece.faces.flatMap(({ vertices }) => {
        const loop = loopOf(vertices);
        return loop.map((at, i) => unit(minus(loop[(i + 1) % loop.length] ?? at, at)));
      }),
    );
    convex = { points, normals, edges, upright: normals.every(isAlongAxis), low: piece.low, high: piece.high };
    ofPieces.set(piece, convex);
  }
  return convex;
}

export function convexOfHull(hull: Hull): Convex {
  let convex = ofHulls.get(hull);
  if (!convex) {
    const normals = distinct(hull.planes.map(({ normal }) => normal));
    convex = {
      points: hull.vertices,
      normals,
      edges: hull.edges,
      upright: false,
      ...boundsOfHull(hull),
    };
    ofHulls.set(hull, convex);
  }
  return convex;
}

/** Enough to see that most bodies are far from it. */
export function boundsOfHull(hull: Hull): Bounds {
  let found = boundsOfHulls.get(hull);
  if (!found) {
    found = bounds(hull.vertices);
    boundsOfHulls.set(hull, found);
  }
  return found;
}

/** The hull moved along a vector; what is known of its directions moves with it. */
export function shiftedHull(hull: Hull, by: Vec): Hull {
  const { planes, vertices, edges } = hull;
  const moved: Hull = {
    edges,
    vertices: vertices.map((at) => plus(at, by)),
    planes: planes.map(({ normal, d }) => ({ normal, d: d + dot(normal, by) })),
  };
  const { low, high } = boundsOfHull(hull);
  const around = { low: plus(low, by), high: plus(high, by) };
  boundsOfHulls.set(moved, around);
  ofHulls.set(moved, { ...convexOfHull(hull), points: moved.vertices, ...around });
  return moved;
}

export function bounds(points: readonly Vec[]): Bounds {
  let [left, front, down] = [Infinity, Infinity, Infinity];
  let [right, back, up] = [-Infinity, -Infinity, -Infinity];
  for (const at of points) {
    const x = at[0];
    const y = at[1];
    const z = at[2];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < front) front = y;
    if (y > back) back = y;
    if (z < down) down = z;
    if (z > up) up = z;
  }
  return { low: [left, front, down], high: [right, back, up] };
}

function distinct(directions: readonly Vec[]): readonly Vec[] {
  const found: Vec[] = [];
  for (const v of directions) if (!found.some((w) => norm(cross(v, w)) < SAME_DIRECTION)) found.push(positive(v));
  return found;
}

/** Of v and −v the one whose first component other than zero is above zero. */
const positive = (v: Vec): Vec => ((v[0] || v[1] || v[2]) < 0 ? times(v, -1) : v);

const isAlongAxis = (v: Vec): boolean => v.filter((component) => component === 0).length === 2;

// A limit of what doubles can tell apart, not of judgement: an angle of 1e-9 is 0.4 units over 25 m.
const SAME_DIRECTION = 1e-9;
