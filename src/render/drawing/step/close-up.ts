/** Where what is new would be lost in a picture of the whole: only its surroundings are drawn. */
import type { View } from "../../../geometry/picture/index.ts";
import { picturePoint } from "../../../geometry/picture/index.ts";
import type { Point2, Vec, VisibleFace } from "../../../geometry/types.ts";
import { minus } from "../../../geometry/vec.ts";
import type { Frame } from "../../style.ts";
import { type Extent, extentOf, extentOfItems, heightOf, widthOf } from "../fit.ts";
import type { Marked } from "../labels.ts";
import type { Picture } from "../picture.ts";
import type { Scene } from "./scene.ts";
import { reachOf } from "./screws.ts";

/** In points: the middle of length and width of what is smaller on paper is no more than a mark. */
const SMALL = 25;
/** What is new takes so much of the picture, and is drawn so many times larger than in the whole: less is not worth it, more shows no surroundings. */
const SHARE = 0.5;
export const LEAST = 1.6;
export const MOST = 6;

/** The rectangle around what has to be seen, where it goes and how it is fastened; null where the whole shows it. */
export function focusOf(scene: Scene, view: View, scale: number, seen: (id: string) => number): Extent | null {
  const { items, fresh, hardware } = scene;
  const parts = items.filter(({ id }) => fresh.has(id) && !hardware.has(id));
  const all = parts.length > 0 ? parts : items.filter(({ id }) => hardware.has(id));
  if (all.length === 0 || all.length === items.length || all.some((item) => sizeOf(item) * scale >= SMALL)) return null;
  const whole = extentOfItems(items, view);
  const boxes = all.map((item) => around(item, scene, view));
  const together = extentOf(boxes.flatMap(({ low, high }) => [low, high]));
  const larger = Math.min(widthOf(whole) / widthOf(together), heightOf(whole) / heightOf(together));
  if (larger * SHARE >= LEAST) return together;
  // All that goes on is shown; of hardware alike one piece is enough.
  if (parts.length > 0) return null;
  // The words tell the place of the half that is bought with it.
  const own = (id: string): boolean => hardware.get(id) === id && seen(id) * scale > 0;
  const isClearer = (id: string, than: string): boolean => (own(id) === own(than) ? seen(id) > seen(than) : own(id));
  const clearest = all.reduce((best, item, i) => (isClearer(item.id, all[best]?.id ?? "") ? i : best), 0);
  return boxes[clearest] ?? null;
}

/** The middle of its length and its width. */
export function sizeOf({ solid }: Marked): number {
  const [, wide = 0, long = 0] = minus(solid.high, solid.low).toSorted((a, b) => a - b);
  return Math.sqrt(wide * long);
}

/** As it is drawn, in its place, and with what is driven into it. */
export function around(item: Marked, { screws }: Scene, view: View): Extent {
  const [here, there] = [extentOfItems([item], view), extentOfItems([{ ...item, shift: [0, 0, 0] }], view)];
  const near = (p: Vec): boolean =>
    ([0, 1, 2] as const).every((i) => {
      const by = item.shift?.[i] ?? 0;
      return p[i] >= item.solid.low[i] + by - 16 && p[i] <= item.solid.high[i] + by + 16;
    });
  const driven = screws.filter(({ mouth }) => near(mouth)).flatMap(reachOf);
  return extentOf([here.low, here.high, there.low, there.high, ...driven.map((p) => picturePoint(view, p))]);
}

export interface Window {
  readonly extent: Extent;
  readonly scale: number;
}

export interface Wanted {
  /** Of the whole; and no larger than this. In points for each unit. */
  readonly scale: number;
  readonly largest: number;
  /** Whether one knows the place in what is drawn: else more of what is around it is. */
  readonly tells: (extent: Extent) => boolean;
}

/** So much smaller is tried next. */
const SMALLER = 0.9;

/** So much of the picture is taken by what has to be seen where nothing else is drawn. */
const MOST_SHARE = 0.86;

/** Round the focus, as large as it goes in. */
export function windowAround(focus: Extent, whole: Extent, frame: Frame, largest: number): Window {
  const scale = Math.min(
    (MOST_SHARE * frame.width) / Math.max(1, widthOf(focus)),
    (MOST_SHARE * frame.height) / Math.max(1, heightOf(focus)),
    largest,
  );
  return { extent: roundAbout(focus, whole, frame, scale), scale };
}

/** What of the plane of view goes into a frame round the focus; null where the whole is drawn nearly as large, or tells no less. */
export function windowOn(focus: Extent, whole: Extent, frame: Frame, { scale, largest, tells }: Wanted): Window | null {
  const most = Math.min(
    (SHARE * frame.width) / Math.max(1, widthOf(focus)),
    (SHARE * frame.height) / Math.max(1, heightOf(focus)),
    MOST * scale,
    largest,
  );
  for (let each = most; each >= LEAST * scale; each *= SMALLER) {
    const extent = roundAbout(focus, whole, frame, each);
    if (tells(extent)) return { extent, scale: each };
  }
  return null;
}

function roundAbout(focus: Extent, whole: Extent, frame: Frame, scale: number): Extent {
  const [wide, high] = [frame.width / scale, frame.height / scale];
  /** The middle of the focus, but no more of what is empty than must be. */
  const middle = (i: 0 | 1, size: number): number => {
    const at = (focus.low[i] + focus.high[i]) / 2;
    const [low, top] = [whole.low[i] + size * 0.4, whole.high[i] - size * 0.4];
    return low > top ? at : Math.max(low, Math.min(top, at));
  };
  const [u, v] = [middle(0, wide), middle(1, high)];
  return { low: [u - wide / 2, v - high / 2], high: [u + wide / 2, v + high / 2] };
}

export const isInside = ({ low, high }: Extent, [u, v]: Point2): boolean =>
  u >= low[0] && u <= high[0] && v >= low[1] && v <= high[1];

/** What of the picture lies inside. */
export function clipped(picture: Picture, faces: readonly VisibleFace[], extent: Extent) {
  const runs = (all: Picture["lines"][number]["visible"]) => all.flatMap((run) => segmentIn(extent, run));
  return {
    picture: {
      ...picture,
      lines: picture.lines.map((line) => ({ ...line, visible: runs(line.visible), hidden: runs(line.hidden) })),
    },
    faces: faces.map((face) => ({
      ...face,
      polygons: face.polygons.map((polygon) => polygonIn(extent, polygon)).filter(({ length }) => length > 2),
    })),
  };
}

export function segmentIn(extent: Extent, [p, q]: readonly [Point2, Point2]): readonly (readonly [Point2, Point2])[] {
  let [from, to] = [0, 1];
  for (const [i, sign, limit] of sidesOf(extent)) {
    const [a, b] = [sign * p[i] - limit, sign * q[i] - limit];
    if (a > 0 && b > 0) return [];
    if (a > 0) from = Math.max(from, a / (a - b));
    else if (b > 0) to = Math.min(to, a / (a - b));
  }
  const on = (t: number): Point2 => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
  return from < to ? [[on(from), on(to)]] : [];
}

export function polygonIn(extent: Extent, polygon: readonly Point2[]): readonly Point2[] {
  let rest = polygon;
  for (const [i, sign, limit] of sidesOf(extent)) {
    const out: Point2[] = [];
    rest.forEach((p, k) => {
      const q = rest[(k + 1) % rest.length] as Point2;
      const [a, b] = [sign * p[i] - limit, sign * q[i] - limit];
      if (a <= 0) out.push(p);
      if (a * b < 0) out.push([p[0] + ((q[0] - p[0]) * a) / (a - b), p[1] + ((q[1] - p[1]) * a) / (a - b)]);
    });
    rest = out;
  }
  return rest;
}

/** Axis, which way, and how far it goes that way. */
const sidesOf = ({ low, high }: Extent): readonly (readonly [0 | 1, 1 | -1, number])[] => [
  [0, 1, high[0]],
  [0, -1, -low[0]],
  [1, 1, high[1]],
  [1, -1, -low[1]],
];
