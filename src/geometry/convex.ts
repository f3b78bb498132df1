/** Convex bodies in doubles, as the judgements need them: corners, and the directions in which two bodies can be parted. */
import { once } from "./once.ts";
import { loopOf } from "./polygon.ts";
import type { Hull, Piece, PieceFace, Vec } from "./types.ts";
import { cross, minus, norm, plus, times, unit } from "./vec.ts";
import { position } from "./vertex.ts";

export interface Bounds {
  readonly low: Vec;
  readonly high: Vec;
}

export interface Convex extends Bounds {
  /** x, y and z of each corner in turn. */
  readonly corners: Float64Array;
  /** Unit normals of the faces, one of each pair of opposite ones. */
  readonly normals: readonly Vec[];
  /** Those of the normals that are not along an axis: of the others the bounds say all. */
  readonly slanting: readonly Vec[];
  /** Unit directions of the edges, one of each pair of opposite ones. */
  readonly edges: readonly Vec[];
  /** A box square to the axes: its bounds say all. */
  readonly upright: boolean;
}

/** A rigid movement of points, and of directions alone. */
export interface Move {
  readonly point: (at: Vec) => Vec;
  readonly way: (way: Vec) => Vec;
}

/** Outward unit normal of a face. */
export const normalOf = ({ plane: { a, b, c, norm: size } }: PieceFace): Vec => [a / size, b / size, c / size];

export const convexOfPiece = once((piece: Piece): Convex => {
  const edges = distinct(
    piece.faces.flatMap(({ vertices }) => {
      const loop = loopOf(vertices);
      return loop.map((at, i) => unit(minus(loop[(i + 1) % loop.length] ?? at, at)));
    }),
  );
  const normals = distinct(piece.faces.map(normalOf));
  return {
    ...{ corners: cornersOf(piece.vertices.map(position)), edges, ...facing(normals) },
    ...{ upright: normals.every(isAlongAxis), low: piece.low, high: piece.high },
  };
});

export const convexOfHull = once((hull: Hull): Convex => {
  const normals = distinct(hull.planes.map(({ normal }) => normal));
  return {
    ...{ corners: cornersOf(hull.vertices), edges: hull.edges, ...facing(normals) },
    ...{ upright: false, ...boundsOfHull(hull) },
  };
});

const facing = (normals: readonly Vec[]): Pick<Convex, "normals" | "slanting"> => ({
  normals,
  slanting: normals.filter((normal) => !isAlongAxis(normal)),
});

function cornersOf(points: readonly Vec[]): Float64Array {
  const corners = new Float64Array(3 * points.length);
  points.forEach((point, i) => {
    corners.set(point, 3 * i);
  });
  return corners;
}

/** Enough to see that most bodies are far from it. */
export const boundsOfHull = once((hull: Hull): Bounds => bounds(hull.vertices));

/** A body moved along a vector; what is known of its directions moves with it. */
export function shifted(body: Convex, by: Vec): Convex {
  const corners = new Float64Array(body.corners.length);
  for (let i = 0; i < corners.length; i += 3) {
    corners[i] = (body.corners[i] as number) + by[0];
    corners[i + 1] = (body.corners[i + 1] as number) + by[1];
    corners[i + 2] = (body.corners[i + 2] as number) + by[2];
  }
  const { normals, slanting, edges, upright } = body;
  return { corners, normals, slanting, edges, upright, ...shiftedBounds(body, by) };
}

export const shiftedBounds = ({ low, high }: Bounds, by: Vec): Bounds => ({ low: plus(low, by), high: plus(high, by) });

/** A body moved and turned. Its directions are worked out when they are first asked for: most bodies meet nothing. */
export function moved(body: Convex, { point, way }: Move): Convex {
  const points: Vec[] = [];
  for (let i = 0; i < body.corners.length; i += 3)
    points.push(point([body.corners[i] as number, body.corners[i + 1] as number, body.corners[i + 2] as number]));
  let directions: Pick<Convex, "normals" | "slanting" | "edges"> | undefined;
  const turned = () => {
    directions ??= { edges: body.edges.map(way), ...facing(body.normals.map((normal) => positive(way(normal)))) };
    return directions;
  };
  return {
    ...{ corners: cornersOf(points), upright: false, ...bounds(points) },
    get normals() {
      return turned().normals;
    },
    get slanting() {
      return turned().slanting;
    },
    get edges() {
      return turned().edges;
    },
  };
}

/** Around all of them. */
export const boundsOfAll = (all: readonly Bounds[]): Bounds => bounds(all.flatMap(({ low, high }) => [low, high]));

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

const isAlongAxis = ([x, y, z]: Vec): boolean => (x === 1 ? y === 0 && z === 0 : x === 0 && y + z === 1 && y * z === 0);

// A limit of what doubles can tell apart, not of judgement: an angle of 1e-9 is 0.4 units over 25 m.
const SAME_DIRECTION = 1e-9;
