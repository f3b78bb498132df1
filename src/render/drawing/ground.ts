/** Which places of the page the picture covers, in cells, so that labels keep off it. */
import type { VisibleFace } from "../../geometry/types.ts";
import type { Frame } from "../style.ts";
import type { Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";

const CELL = 3;

/** 1 where a spot lies on a visible face, 0 elsewhere. */
export function groundOf(faces: readonly VisibleFace[], fit: Fit, frame: Frame): (spot: Spot) => number {
  const part = partAt(faces, fit, frame);
  return (spot) => (part(spot) === null ? 0 : 1);
}

/** The id of the part of which a face is seen at a spot. */
export function partAt(faces: readonly VisibleFace[], fit: Fit, frame: Frame): (spot: Spot) => string | null {
  const columns = Math.ceil(frame.width / CELL) + 1;
  const covered = new Map<number, string>();
  const cell = (x: number, from: number): number => Math.floor((x - from) / CELL);
  for (const { id, polygons } of faces)
    for (const polygon of polygons) {
      const spots = polygon.map(fit.page);
      const ys = spots.map((spot) => spot[1]);
      for (let j = cell(Math.min(...ys), frame.y); j <= cell(Math.max(...ys), frame.y); j++) {
        const row = crossing(spots, frame.y + (j + 0.5) * CELL);
        if (!row) continue;
        const last = Math.floor((row[1] - frame.x) / CELL - 0.5);
        for (let i = Math.ceil((row[0] - frame.x) / CELL - 0.5); i <= last; i++) covered.set(j * columns + i, id);
      }
    }
  return ([x, y]) => covered.get(cell(y, frame.y) * columns + cell(x, frame.x)) ?? null;
}

/** Where a level line enters and leaves a convex polygon; null where it misses it. */
function crossing(polygon: readonly Spot[], y: number): readonly [number, number] | null {
  let [low, high] = [Infinity, -Infinity];
  polygon.forEach(([x1, y1], i) => {
    const [x2, y2] = polygon[(i + 1) % polygon.length] as Spot;
    if (y1 < y === y2 < y) return;
    const x = x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
    low = Math.min(low, x);
    high = Math.max(high, x);
  });
  return low < high ? [low, high] : null;
}
