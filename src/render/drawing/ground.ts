/** Which places of the page the picture covers, in cells, so that labels keep off it. */
import type { VisibleFace } from "../../geometry/types.ts";
import type { Frame } from "../style.ts";
import type { Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";

const CELL = 3;

/** 1 where a spot lies on a visible face, 0 elsewhere. */
export function groundOf(faces: readonly VisibleFace[], fit: Fit, frame: Frame): (spot: Spot) => number {
  const columns = Math.ceil(frame.width / CELL) + 1;
  const covered = new Set<number>();
  const cell = (x: number, from: number): number => Math.floor((x - from) / CELL);
  for (const polygon of faces.flatMap((f) => f.polygons.map((p) => p.map(fit.page)))) {
    const [xs, ys] = [polygon.map((p) => p[0]), polygon.map((p) => p[1])];
    for (let i = cell(Math.min(...xs), frame.x); i <= cell(Math.max(...xs), frame.x); i++)
      for (let j = cell(Math.min(...ys), frame.y); j <= cell(Math.max(...ys), frame.y); j++)
        if (holds(polygon, [frame.x + (i + 0.5) * CELL, frame.y + (j + 0.5) * CELL])) covered.add(j * columns + i);
  }
  return ([x, y]) => (covered.has(cell(y, frame.y) * columns + cell(x, frame.x)) ? 1 : 0);
}

/** Whether a convex polygon holds a spot. */
export function holds(polygon: readonly Spot[], [x, y]: Spot): boolean {
  let sign = 0;
  for (let i = 0; i < polygon.length; i++) {
    const [[a, b], [c, d]] = [polygon[i] ?? [x, y], polygon[(i + 1) % polygon.length] ?? [x, y]];
    const turn = (c - a) * (y - b) - (d - b) * (x - a);
    if (turn * sign < 0) return false;
    if (turn !== 0) sign = turn;
  }
  return sign !== 0;
}
