/** Plain shapes as items. */
import type { Ink, Item, PathStep, Stroke } from "./document.ts";

export interface Paint {
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

/** A polygon through the points, closed. */
export const polygon = (points: readonly (readonly [number, number])[], paint: Paint): Item => ({
  kind: "path",
  steps: [...points.map(([x, y], i): PathStep => ({ to: i === 0 ? "move" : "line", x, y })), { to: "close" }],
  ...paint,
});

export const rectangle = (x: number, y: number, width: number, height: number, paint: Paint): Item =>
  polygon(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    paint,
  );

export const line = (x1: number, y1: number, x2: number, y2: number, stroke: Stroke): Item => ({
  kind: "path",
  steps: [
    { to: "move", x: x1, y: y1 },
    { to: "line", x: x2, y: y2 },
  ],
  stroke,
});

/** Four curves; off a true circle by less than 0.03 % of the radius. */
export function circle(x: number, y: number, r: number, paint: Paint): Item {
  const k = r * 0.5523;
  const quarter = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number): PathStep => ({
    to: "curve",
    x1: x + x1,
    y1: y + y1,
    x2: x + x2,
    y2: y + y2,
    x: x + toX,
    y: y + toY,
  });
  const steps: PathStep[] = [
    { to: "move", x: x + r, y },
    quarter(r, k, k, r, 0, r),
    quarter(-k, r, -r, k, -r, 0),
    quarter(-r, -k, -k, -r, 0, -r),
    quarter(k, -r, r, -k, r, 0),
    { to: "close" },
  ];
  return { kind: "path", steps, ...paint };
}

/** Furniture of the page that says nothing to somebody who listens. */
export const decoration = (...items: readonly Item[]): Item => ({ kind: "group", role: "decoration", items });
