/** Glass on the page: a pale tint that tells from any wood in grey too, and three short strokes aslant, as on a window pane. */
import type { VisibleFace } from "../../geometry/types.ts";
import type { Item } from "../document.ts";
import { GLASS } from "../palette.ts";
import type { Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";
import { fills, strokes } from "./ink.ts";
import type { Segment } from "./plate.ts";
import { SHEEN } from "./strokes.ts";
import { seenArea } from "./targets.ts";

/** Half the length of each stroke, and how far it lies from the middle of the pane; as shares of the pane's smaller side. */
const STROKES = [
  { half: 0.1, aside: -0.07 },
  { half: 0.2, aside: 0 },
  { half: 0.1, aside: 0.07 },
] as const;
/** In points: of more than this the strokes do not grow, in less than this they are left out. */
const LARGEST = 150;
const SMALLEST = 14;

export const glassTint = (panes: readonly VisibleFace[], fit: Fit): readonly Item[] =>
  fills(
    panes.flatMap(({ polygons }) => polygons.map((polygon) => polygon.map(fit.page))),
    GLASS,
  );

/** On the broadest face of each pane that is seen. */
export const sheen = (panes: readonly VisibleFace[], fit: Fit): readonly Item[] =>
  strokes(sheenLines(panes, fit), SHEEN);

export const sheenLines = (panes: readonly VisibleFace[], fit: Fit): readonly Segment[] =>
  [...new Set(panes.map(({ id }) => id))].flatMap((id) => {
    const faces = panes.filter((face) => face.id === id);
    const [broadest] = faces.sort((a, b) => seenArea([b], id, 1) - seenArea([a], id, 1));
    return broadest ? strokesIn(broadest.polygons.map((polygon) => polygon.map(fit.page))) : [];
  });

function strokesIn(polygons: readonly (readonly Spot[])[]): readonly Segment[] {
  const [xs, ys] = [0, 1].map((i) => polygons.flatMap((polygon) => polygon.map((spot) => spot[i as 0 | 1])));
  if (!xs || !ys || xs.length === 0) return [];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const side = Math.min(right - left, bottom - top, LARGEST);
  if (side < SMALLEST) return [];
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return STROKES.flatMap(({ half, aside }) => {
    const [by, off] = [half * side, aside * side];
    const stroke: Segment = [
      [x + off - by, y + off + by],
      [x + off + by, y + off - by],
    ];
    return polygons.flatMap((polygon) => within(stroke, polygon));
  });
}

/** The part of a segment in a convex polygon. */
export function within([p, q]: Segment, polygon: readonly Spot[]): readonly Segment[] {
  const turn = ([ax, ay]: Spot, [bx, by]: Spot, [x, y]: Spot): number => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  const next = (i: number): Spot => polygon[(i + 1) % polygon.length] as Spot;
  const around = polygon.reduce((sum, [x, y], i) => sum + x * next(i)[1] - y * next(i)[0], 0);
  let [start, end] = [0, 1];
  for (const [i, corner] of polygon.entries()) {
    const [a, b] = [p, q].map((spot) => turn(corner, next(i), spot) * Math.sign(around)) as [number, number];
    if (a < 0 && b < 0) return [];
    if (a >= 0 && b >= 0) continue;
    const t = a / (a - b);
    if (a < 0) start = Math.max(start, t);
    else end = Math.min(end, t);
  }
  const at = (t: number): Spot => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
  return end > start ? [[at(start), at(end)]] : [];
}
