/** A picture on the page: edges as lines, faces as tints. */
import type { Placed, Stage, View } from "../../geometry/picture/index.ts";
import type { PictureItem, VisibleFace } from "../../geometry/types.ts";
import type { Ink, Item, Stroke } from "../document.ts";
import { TINT } from "../palette.ts";
import type { Spot } from "./drawing.ts";
import type { Fit } from "./fit.ts";
import { fills, onPage, strokes } from "./ink.ts";
import type { Plate, Segment } from "./plate.ts";
import { Sight } from "./sight.ts";

const POINTS_PER_MM = 72 / 25.4;
/** Shorter runs on paper are left out: mere specks in a drawing, clutter in a step's picture. */
export const SPECK = { drawing: 0.05 * POINTS_PER_MM, step: 0.3 * POINTS_PER_MM } as const;

export interface Picture {
  readonly stage: Stage;
  readonly lines: readonly PictureItem[];
  readonly sight: Sight;
}

/** How a picture is taken: `clear` is what is glass, by its ids. */
export interface Exposure {
  readonly clear: ReadonlySet<string>;
  readonly speck?: number;
  /** Whether hidden edges are worked out too. */
  readonly hidden?: boolean;
}

export function takePicture(
  items: readonly Placed[],
  view: View,
  fit: Fit,
  { clear, speck = SPECK.drawing, hidden = false }: Exposure,
): Picture {
  const sight = new Sight(items, view, clear);
  return { stage: sight.stage, lines: sight.lines({ hidden, shortest: speck / fit.scale }), sight };
}

/** The visible edges of the chosen items on the page; the plate remembers them. */
export function linesOf(picture: Picture, fit: Fit, plate: Plate, chosen: (id: string) => boolean): readonly Segment[] {
  const segments = picture.lines.filter(({ id }) => chosen(id)).flatMap(({ visible }) => onPage(fit, visible));
  for (const segment of segments) plate.addLine(segment);
  return segments;
}

export const edgesOf = (
  picture: Picture,
  fit: Fit,
  plate: Plate,
  stroke: Stroke,
  chosen: (id: string) => boolean,
): readonly Item[] => strokes(linesOf(picture, fit, plate, chosen), stroke);

/** Visible faces on the page that have one tone. */
export interface Toned {
  readonly ink: Ink;
  readonly polygons: readonly (readonly Spot[])[];
}

export const tints = (faces: readonly VisibleFace[], fit: Fit, view: View, tint = TINT): readonly Item[] =>
  tones(faces, fit, view, tint).flatMap(({ ink, polygons }) => fills(polygons, ink));

/** The visible faces in three strengths of the tint, by how they lie to the light. */
export function tones(faces: readonly VisibleFace[], fit: Fit, view: View, tint = TINT): readonly Toned[] {
  const tones = [tint.light, tint.middle, tint.dark].map((ink) => ({ ink, polygons: [] as (readonly Spot[])[] }));
  for (const { normal, polygons } of faces) {
    const tone = tones[toneOf(normal, view)];
    for (const polygon of polygons) tone?.polygons.push(polygon.map(fit.page));
  }
  return tones;
}

/** 0 for what looks up the page, 1 for what looks left on it, 2 for what looks right. */
function toneOf(normal: readonly [number, number, number], { right, up, towards }: View): number {
  const along = (v: readonly [number, number, number]) => normal[0] * v[0] + normal[1] * v[1] + normal[2] * v[2];
  const size = (v: readonly [number, number, number]) => Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  const [u, v, w] = [along(right) / size(right), along(up) / size(up), along(towards) / size(towards)];
  if (v > 0.6 || w > 0.95) return 0;
  return u <= 0 ? 1 : 2;
}
