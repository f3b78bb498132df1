/** What is in the way of a part that travels in a straight line. */
import { TOLERANCE } from "../units/length.ts";
import { convexOfPiece } from "./convex.ts";
import { boundsDepth, depth } from "./separation.ts";
import type { Solid, Vec } from "./types.ts";
import { times } from "./vec.ts";

/**
 * Whether `moving`, carried along the unit vector from where it is to `distance` units away (or for ever), passes through `still`
 * by more than the tolerance. Sliding in contact is allowed.
 */
export function blocks(moving: Solid, still: Solid, along: Vec, distance = Infinity): boolean {
  // Nothing can happen once it has left `still` behind, so the way is never endless.
  const passed = reach(still, along) + reach(moving, times(along, -1));
  if (passed <= TOLERANCE) return false;
  const travel = times(along, Math.min(distance, passed));
  if (boundsDepth(moving, still, travel) <= TOLERANCE) return false;
  return moving.pieces.some(
    (p) =>
      boundsDepth(p, still, travel) > TOLERANCE &&
      still.pieces.some(
        (q) =>
          boundsDepth(p, q, travel) > TOLERANCE &&
          depth(convexOfPiece(p), convexOfPiece(q), travel, TOLERANCE) > TOLERANCE,
      ),
  );
}

/** Whether nothing of `still` is in the way. */
export const travelFree = (moving: Solid, still: readonly Solid[], along: Vec, distance = Infinity): boolean =>
  !still.some((other) => blocks(moving, other, along, distance));

/** The farthest that the bounds of a solid come along a direction. */
const reach = ({ low, high }: Solid, along: Vec): number =>
  farthest(low, high, along, 0) + farthest(low, high, along, 1) + farthest(low, high, along, 2);

const farthest = (low: Vec, high: Vec, along: Vec, i: 0 | 1 | 2): number =>
  along[i] === 0 ? 0 : along[i] * (along[i] > 0 ? high[i] : low[i]);
