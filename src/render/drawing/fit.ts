/** From the plane of view, where v runs up, to the page, where y runs down. */
import { type Placed, picturePoint, type View } from "../../geometry/picture/index.ts";
import type { Point2, Vec } from "../../geometry/types.ts";
import { plus } from "../../geometry/vec.ts";
import type { Frame } from "../style.ts";
import type { Spot } from "./drawing.ts";

/** A rectangle of the plane of view. */
export interface Extent {
  readonly low: Point2;
  readonly high: Point2;
}

export const widthOf = ({ low, high }: Extent): number => high[0] - low[0];
export const heightOf = ({ low, high }: Extent): number => high[1] - low[1];

export function extentOf(points: readonly Point2[]): Extent {
  const bound = (of: (a: number, b: number) => number, start: number, i: 0 | 1) =>
    points.reduce((so, p) => of(so, p[i]), start);
  return {
    low: [bound(Math.min, Infinity, 0), bound(Math.min, Infinity, 1)],
    high: [bound(Math.max, -Infinity, 0), bound(Math.max, -Infinity, 1)],
  };
}

/** The rectangle around the items as they are drawn. */
export const extentOfItems = (items: readonly Placed[], view: View): Extent =>
  extentOf(
    items.flatMap(({ solid, shift = [0, 0, 0] }) =>
      solid.pieces.flatMap((piece) => piece.vertices.map((p) => picturePoint(view, plus([p.x, p.y, p.z], shift)))),
    ),
  );

export interface Fit {
  /** Points for each unit of the plane of view. */
  readonly scale: number;
  readonly page: (p: Point2) => Spot;
  readonly spot: (view: View, p: Vec) => Spot;
}

/** The extent drawn at a scale (points per unit) with its top left corner at (x, y). */
export function fitAt(extent: Extent, scale: number, x: number, y: number): Fit {
  const page = ([u, v]: Point2): Spot => [x + (u - extent.low[0]) * scale, y + (extent.high[1] - v) * scale];
  return { scale, page, spot: (view, p) => page(picturePoint(view, p)) };
}

/** The largest scale at which the extent goes into the frame. */
export const scaleInto = (extent: Extent, frame: Frame): number =>
  Math.min(frame.width / Math.max(1, widthOf(extent)), frame.height / Math.max(1, heightOf(extent)));

/** The extent in the middle of the frame. */
export function fitInto(extent: Extent, frame: Frame, scale: number): Fit {
  const x = frame.x + (frame.width - widthOf(extent) * scale) / 2;
  const y = frame.y + (frame.height - heightOf(extent) * scale) / 2;
  return fitAt(extent, scale, x, y);
}

export const inset = ({ x, y, width, height }: Frame, by: number): Frame => ({
  x: x + by,
  y: y + by,
  width: Math.max(1, width - 2 * by),
  height: Math.max(1, height - 2 * by),
});
