/** Rays against pieces, slab by slab: an independent judge of what is seen. It knows nothing of shadows, edges or seams. */
import type { SceneItem, Vec } from "../../../src/geometry/types.ts";

const along = (p: Vec, v: Vec, t: number): Vec => [p[0] + v[0] * t, p[1] + v[1] * t, p[2] + v[2] * t];

/** The parameters between which the line p + t·v is inside a piece drawn in by `shrink` units; null where it misses. */
export function inside(
  piece: SceneItem["solid"]["pieces"][number],
  p: Vec,
  v: Vec,
  shrink: number,
): readonly [number, number] | null {
  let [enter, leave] = [-Infinity, Infinity];
  for (const { plane } of piece.faces) {
    const rate = plane.a * v[0] + plane.b * v[1] + plane.c * v[2];
    const out = plane.a * p[0] + plane.b * p[1] + plane.c * p[2] - plane.d + shrink * plane.norm;
    if (rate === 0) {
      if (out >= 0) return null;
    } else if (rate > 0) leave = Math.min(leave, -out / rate);
    else enter = Math.max(enter, -out / rate);
  }
  return enter < leave ? [enter, leave] : null;
}

/** Whether wood stands between p and the eye, which is towards v. */
export const blocked = (items: readonly SceneItem[], p: Vec, v: Vec, shrink: number): boolean =>
  items.some(({ solid }) =>
    solid.pieces.some((piece) => {
      const run = inside(piece, p, v, shrink);
      return run !== null && run[1] > 0 && run[1] - Math.max(0, run[0]) > 0;
    }),
  );

/** The item seen first by an eye that looks along −v through p, or null. */
export function firstSeen(items: readonly SceneItem[], p: Vec, v: Vec): string | null {
  let best: { id: string; at: number } | null = null;
  for (const { id, solid } of items)
    for (const piece of solid.pieces) {
      const run = inside(piece, p, v, 0);
      if (run && (!best || run[1] > best.at)) best = { id, at: run[1] };
    }
  return best?.id ?? null;
}

export { along };
