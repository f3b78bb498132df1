/** How far two solids reach into each other. */
import { convexOfPiece } from "./convex.ts";
import { boundsDepth, depth } from "./separation.ts";
import type { Solid } from "./types.ts";

/**
 * Over all pairs of pieces the greatest of the least shifts that would part them, in units; 0 when no pair overlaps.
 * Parts overlap when it exceeds TOLERANCE.
 */
export function overlapDepth(a: Solid, b: Solid): number {
  let deepest = 0;
  if (boundsDepth(a, b) <= 0) return deepest;
  for (const p of a.pieces) {
    if (boundsDepth(p, b) <= deepest) continue;
    for (const q of b.pieces) {
      // No pair can be deeper than its bounds overlap.
      if (boundsDepth(p, q) <= deepest) continue;
      deepest = Math.max(deepest, depth(convexOfPiece(p), convexOfPiece(q), undefined, deepest));
    }
  }
  return deepest;
}
