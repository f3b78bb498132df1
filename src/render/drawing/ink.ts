/** Marks on paper as items. */
import type { Point2 } from "../../geometry/types.ts";
import type { Font, Ink, Item, PathStep, Stroke } from "../document.ts";
import { BLACK } from "../palette.ts";
import { polygon } from "../shapes.ts";
import { CAP_HEIGHT } from "../typeset/measure.ts";
import type { Pen, Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";
import { type Box, boxAround, type Segment } from "./plate.ts";

/** One path for many segments; nothing for none. */
export function strokes(segments: readonly Segment[], stroke: Stroke): readonly Item[] {
  if (segments.length === 0) return [];
  const steps = segments.flatMap(([[x1, y1], [x2, y2]]): PathStep[] => [
    { to: "move", x: x1, y: y1 },
    { to: "line", x: x2, y: y2 },
  ]);
  return [{ kind: "path", steps, stroke }];
}

/** One path for many polygons, so that no hairline shows between two that share a side. */
export function fills(polygons: readonly (readonly Spot[])[], fill: Ink): readonly Item[] {
  if (polygons.length === 0) return [];
  const steps = polygons.flatMap((corners): PathStep[] => [
    ...corners.map(([x, y], i): PathStep => ({ to: i === 0 ? "move" : "line", x, y })),
    { to: "close" },
  ]);
  return [{ kind: "path", steps, fill }];
}

export const onPage = (fit: Fit, runs: readonly (readonly [Point2, Point2])[]): Segment[] =>
  runs.map(([a, b]) => [fit.page(a), fit.page(b)]);

export interface Lettering {
  readonly font?: Font;
  readonly size?: number;
  readonly ink?: Ink;
}

/** Heights of letters for collisions: capitals and figures, with a fraction's reach. */
export const letterHeight = (size: number): number => size * CAP_HEIGHT;

/** A text whose middle, of capitals and of width, is at the spot, and the box that it fills. */
export function centred(pen: Pen, text: string, [x, y]: Spot, look: Lettering = {}): { item: Item; box: Box } {
  const { font = "regular", size = 10, ink = BLACK } = look;
  const width = pen.measure(text, font, size);
  const high = letterHeight(size);
  return {
    item: { kind: "text", x: x - width / 2, y: y + high / 2, text, font, size, ink, width },
    box: boxAround(x, y, width, high + size * 0.3),
  };
}

/** A filled arrowhead with its point at the spot; `along` is the unit direction into which it points. */
export function arrowhead([x, y]: Spot, along: Spot, ink: Ink, size = 5, half = size / 6): Item {
  const back = (side: number): Spot => [
    x - along[0] * size - along[1] * half * side,
    y - along[1] * size + along[0] * half * side,
  ];
  return polygon([[x, y], back(1), back(-1)], { fill: ink });
}

/** The unit direction from a to b, and the distance; rightwards when they coincide. */
export function heading(from: Spot, to: Spot): { readonly along: Spot; readonly distance: number } {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const distance = Math.sqrt(dx * dx + dy * dy);
  return { along: distance > 0 ? [dx / distance, dy / distance] : [1, 0], distance };
}

export const ahead = ([x, y]: Spot, along: Spot, by: number): Spot => [x + along[0] * by, y + along[1] * by];
