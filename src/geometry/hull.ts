/** Envelopes of tools and of moving things: convex bodies in doubles that only judge. */
import { TOLERANCE } from "../units/length.ts";
import { circlePoint } from "./angle.ts";
import { boundsOfHull, convexOfHull, convexOfPiece, normalOf } from "./convex.ts";
import { boundsDepth, depth } from "./separation.ts";
import type { Hull, Piece, Solid, Vec } from "./types.ts";
import { cross, dot, plus, times, unit } from "./vec.ts";
import { position } from "./vertex.ts";

const ofPieces = new WeakMap<Piece, Hull>();

/** A piece as a hull. */
export function hullOf(piece: Piece): Hull {
  let hull = ofPieces.get(piece);
  if (!hull) {
    hull = {
      planes: piece.faces.map((face) => ({ normal: normalOf(face), d: face.plane.d / face.plane.norm })),
      vertices: piece.vertices.map(position),
      edges: convexOfPiece(piece).edges,
    };
    ofPieces.set(piece, hull);
  }
  return hull;
}

/** A prism around the cylinder that starts at `from` and runs `length` units in a unit `direction`. */
export function cylinder(from: Vec, direction: Vec, radius: number, length: number, sides = 12): Hull {
  const [across, up] = square(direction);
  const outward = (turn: number): Vec => {
    const [cos, sin] = circlePoint(turn, sides);
    return plus(times(across, cos), times(up, sin));
  };
  const turns = Array.from({ length: sides }, (_, i) => i);
  const corner = radius / circlePoint(1, 2 * sides)[0];
  const start = dot(direction, from);
  const rim = turns.map((i) => plus(from, times(outward(i + 0.5), corner)));
  return {
    planes: [
      { normal: times(direction, -1), d: -start },
      { normal: direction, d: start + length },
      ...turns.map((i) => ({ normal: outward(i), d: dot(outward(i), from) + radius })),
    ],
    vertices: [...rim, ...rim.map((at) => plus(at, times(direction, length)))],
    // Where the number of sides is odd, no two edges of the rim are parallel.
    edges: [direction, ...turns.slice(0, sides % 2 ? sides : sides / 2).map((i) => cross(direction, outward(i)))],
  };
}

/** The greatest of the least shifts, in units, that would clear the hull of each piece of the solid; 0 when it is clear. */
export const hullDepth = (hull: Hull, solid: Solid): number => deepest(hull, solid, Infinity);

/** Whether the hull reaches into the solid by more than the tolerance. */
export const hullHits = (hull: Hull, solid: Solid): boolean => deepest(hull, solid, TOLERANCE) > TOLERANCE;

/** Stops early at a depth beyond `limit`. */
function deepest(hull: Hull, solid: Solid, limit: number): number {
  let found = 0;
  if (boundsDepth(boundsOfHull(hull), solid) <= 0) return found;
  const convex = convexOfHull(hull);
  for (const piece of solid.pieces) {
    if (boundsDepth(convex, piece) <= found) continue;
    found = Math.max(found, depth(convex, convexOfPiece(piece), undefined, found));
    if (found > limit) return found;
  }
  return found;
}

/** Whether the hull, carried along the vector, passes through the solid by more than the tolerance. */
export function hullBlocked(hull: Hull, solid: Solid, travel: Vec): boolean {
  if (boundsDepth(boundsOfHull(hull), solid, travel) <= TOLERANCE) return false;
  const convex = convexOfHull(hull);
  return solid.pieces.some(
    (piece) =>
      boundsDepth(convex, piece, travel) > TOLERANCE &&
      depth(convex, convexOfPiece(piece), travel, TOLERANCE) > TOLERANCE,
  );
}

/** Two unit vectors square to a unit vector and to each other. */
function square(direction: Vec): readonly [Vec, Vec] {
  const [x, y, z] = direction.map(Math.abs) as [number, number, number];
  const least: Vec = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const across = unit(cross(direction, least));
  return [across, cross(direction, across)];
}
