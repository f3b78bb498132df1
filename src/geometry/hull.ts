/** Envelopes of tools and of moving things: convex bodies in doubles that only judge. */
import { TOLERANCE } from "../units/length.ts";
import { circlePoint } from "./angle.ts";
import { type Bounds, boundsOfHull, type Convex, convexOfHull, convexOfPiece } from "./convex.ts";
import { boundsDepth, depth } from "./separation.ts";
import type { Hull, Solid, Vec } from "./types.ts";
import { cross, dot, plus, times, unit } from "./vec.ts";

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

/** A hull, or what judging needs of one that was moved. */
export type Envelope = Hull | Convex;
const convexOf = (hull: Envelope): Convex => ("corners" in hull ? hull : convexOfHull(hull));
const boundsOf = (hull: Envelope): Bounds => ("corners" in hull ? hull : boundsOfHull(hull));

/** The greatest of the least shifts, in units, that would clear the hull of each piece of the solid; 0 when it is clear. */
export const hullDepth = (hull: Envelope, solid: Solid): number => deepest(hull, solid, Infinity);

/** Whether the hull reaches into the solid by more than the tolerance. */
export const hullHits = (hull: Envelope, solid: Solid): boolean => deepest(hull, solid, TOLERANCE) > TOLERANCE;

/** Stops early at a depth beyond `limit`. */
function deepest(hull: Envelope, solid: Solid, limit: number): number {
  let found = 0;
  if (boundsDepth(boundsOf(hull), solid) <= 0) return found;
  const convex = convexOf(hull);
  for (const piece of solid.pieces) {
    if (boundsDepth(convex, piece) <= found) continue;
    found = Math.max(found, depth(convex, convexOfPiece(piece), undefined, found));
    if (found > limit) return found;
  }
  return found;
}

/** Whether the hull, carried along the vector, passes through the solid by more than the tolerance. */
export function hullBlocked(hull: Envelope, solid: Solid, travel: Vec): boolean {
  if (boundsDepth(boundsOf(hull), solid, travel) <= TOLERANCE) return false;
  const convex = convexOf(hull);
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
