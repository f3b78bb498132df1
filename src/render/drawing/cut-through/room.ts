/** Where in some polygons most room is for a mark. */
import type { Point2 } from "../../../geometry/types.ts";
import type { Spot } from "../drawing.ts";
import { type Box, boxAround, type Plate } from "../plate.ts";
import { holds } from "../step/share.ts";

/** Between places that are tried, and the least and the most room that counts; half of what a mark takes. In points. */
const STEP = 3;
const [LEAST, MOST] = [6, 14] as const;

/** Null where none is. The first of places with as much room. */
export function mostRoom(
  polygons: readonly (readonly Point2[])[],
  plate: Plate,
  { left, right, top, bottom }: Box,
): Spot | null {
  let best: { readonly spot: Spot; readonly room: number } | null = null;
  for (let x = left + LEAST; x <= right - LEAST; x += STEP)
    for (let y = top + LEAST; y <= bottom - LEAST; y += STEP) {
      if (!polygons.some((each) => holds(each, [x, y]))) continue;
      const room = roomAt([x, y], plate);
      const edge = Math.min(x - left, right - x, y - top, bottom - y);
      const worth = Math.min(room, edge);
      if (worth >= LEAST && (!best || worth > best.room)) best = { spot: [x, y], room: worth };
    }
  return best?.spot ?? null;
}

function roomAt([x, y]: Spot, plate: Plate): number {
  for (let half = MOST; half >= LEAST; half--) {
    const box = boxAround(x, y, 2 * half, 2 * half);
    if (plate.linesThrough(box) === 0 && plate.isClear(box)) return half;
  }
  return 0;
}
