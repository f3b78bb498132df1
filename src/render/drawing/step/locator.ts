/** Beside a picture of some surroundings: the whole, small, with a rectangle round what the picture shows. */
import type { View } from "../../../geometry/picture/index.ts";
import type { VisibleFace } from "../../../geometry/types.ts";
import type { Item, Stroke } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import { rectangle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import { type Extent, fitInto, scaleInto } from "../fit.ts";
import { onPage, strokes } from "../ink.ts";
import { type Picture, tints } from "../picture.ts";
import { NARROW } from "../strokes.ts";
import { segmentIn } from "./close-up.ts";

/** How wide it is, and how far from the picture. */
export const LOCATOR = { width: 62, height: 74, gap: 8 } as const;

const HAIR: Stroke = { width: 0.25, ink: BLACK };
const ROUND: Stroke = { width: 0.9, ink: BLACK };
/** Shorter lines are left out. */
const SPECK = 1.2;

/** The frame of the picture, with the locator beside its top. */
export function located(
  main: Frame,
  window: Extent,
  whole: { readonly extent: Extent; readonly picture: Picture; readonly faces: readonly VisibleFace[] },
  isNew: (id: string) => boolean,
  view: View,
): readonly Item[] {
  const { extent, picture, faces } = whole;
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
  const [[left, bottom], [right, top]] = [fit.page(window.low), fit.page(window.high)];
  const corners = [
    [window.low, [window.high[0], window.low[1]]],
    [[window.high[0], window.low[1]], window.high],
    [window.high, [window.low[0], window.high[1]]],
    [[window.low[0], window.high[1]], window.low],
  ] as const;
  const inside = left >= room.x && right <= room.x + room.width && top >= room.y && bottom <= room.y + room.height;
  return [
    ...tints(
      faces.filter(({ id }) => isNew(id)),
      fit,
      view,
    ),
    ...strokes(lines, HAIR),
    ...strokes(onPage(fit, inside ? corners : corners.flatMap((side) => segmentIn(extent, side))), ROUND),
    rectangle(main.x, main.y, main.width, main.height, { stroke: NARROW }),
  ];
}
