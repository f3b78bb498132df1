/** Beside a picture of some surroundings: the whole, small, with a rectangle round what the picture shows. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Point2, VisibleFace } from "../../../geometry/types.ts";
import type { Item, Stroke } from "../../document.ts";
import { BLACK, METAL } from "../../palette.ts";
import { rectangle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { type Extent, extentOf, fitInto, scaleInto } from "../fit.ts";
import { onPage, strokes } from "../ink.ts";
import { type Picture, tints } from "../picture.ts";
import { NARROW } from "../strokes.ts";
import type { Scene } from "./scene.ts";

/** How large it is at most, and how far from the picture. */
export const LOCATOR = { width: 62, height: 74, gap: 8 } as const;
/** No higher is the picture beside it. */
export const HIGHEST = 140;

const HAIR: Stroke = { width: 0.25, ink: BLACK };
const ROUND: Stroke = { width: 0.9, ink: BLACK };
/** Shorter lines are left out. */
const SPECK = 1.2;

/** The frame of the picture, with the locator beside its top. */
export function located(
  main: Frame,
  window: Extent,
  whole: { readonly extent: Extent; readonly picture: Picture; readonly faces: readonly VisibleFace[] },
  { fresh, hardware }: Pick<Scene, "fresh" | "hardware">,
  view: View,
): readonly Item[] {
  const { picture, faces } = whole;
  const extent = extentOf([whole.extent.low, whole.extent.high, window.low, window.high]);
  const room: Frame = {
    x: main.x + main.width + LOCATOR.gap,
    y: main.y,
    width: LOCATOR.width,
    height: Math.min(LOCATOR.height, main.height),
  };
  const scale = scaleInto(extent, room) * 0.98;
  const fit = fitInto(extent, room, scale);
  const lines = onPage(
    fit,
    picture.lines.flatMap(({ visible }) => visible),
  ).filter(([[x1, y1], [x2, y2]]) => Math.abs(x2 - x1) + Math.abs(y2 - y1) >= SPECK);
  const { low, high } = window;
  const corners: readonly Point2[] = [low, [high[0], low[1]], high, [low[0], high[1]]];
  const sides = corners.map((corner, i) => [corner, corners[(i + 1) % 4] ?? corner] as const);
  return [
    ...tints(
      faces.filter(({ id }) => fresh.has(id) && !hardware.has(id)),
      fit,
      view,
    ),
    ...tints(
      faces.filter(({ id }) => hardware.has(id)),
      ...[fit, view, METAL],
    ),
    ...strokes(lines, HAIR),
    ...strokes(onPage(fit, sides), ROUND),
    rectangle(main.x, main.y, main.width, main.height, { stroke: NARROW }),
  ];
}
