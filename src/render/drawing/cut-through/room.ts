/** Where in some polygons most room is for a mark. */
import type { Point2 } from "../../../geometry/types.ts";
import type { Spot } from "../drawing.ts";
import { type Box, boxAround, type Plate } from "../plate.ts";
import { holds } from "../step/share.ts";

/** Between places that are tried, and the least and the most room that counts; and as much as a mark takes, halved. In points. */
const STEP = 3;
const [NONE, MOST] = [2, 14] as const;
export const ENOUGH = 6;

/** Null where none is. The first of places with as much room; `covered`: polygons that lie on top. */
export function mostRoom(
  polygons: readonly (readonly Point2[])[],
  covered: readonly (readonly Point2[])[],
  plate: Plate,
  { left, right, top, bottom }: Box,
): { readonly spot: Spot; readonly room: number } | null {
  let best: { readonly spot: Spot; readonly room: number } | null = null;
  for (let x = left + NONE; x <= right - NONE; x += STEP)
    for (let y = top + NONE; y <= bottom - NONE; y += STEP) {
      const isIn = (each: readonly Point2[]): boolean => holds(each, [x, y]);
      if (!polygons.some(isIn) || covered.some(isIn)) continue;
      const room = roomAt([x, y], plate);
      const edge = Math.min(x - left, right - x, y - top, bottom - y);
      const worth = Math.min(room, edge);
      if (worth >= NONE && (!best || worth > best.room)) best = { spot: [x, y], room: worth };
    }
  return best;
}

function roomAt([x, y]: Spot, plate: Plate): number {
  for (let half = MOST; half >= NONE; half--) {
    const box = boxAround(x, y, 2 * half, 2 * half);
    if (plate.linesThrough(box) === 0 && plate.isClear(box)) return half;
  }
  return 0;
}
