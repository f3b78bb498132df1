/** How large a step's picture is, and what of it is drawn. */
import { picturePoint, type View } from "../../../geometry/picture/index.ts";
import type { VisibleFace } from "../../../geometry/types.ts";
import type { Build, Step } from "../../../solve/build.ts";
import { UNITS_PER_INCH } from "../../../units/index.ts";
import type { Frame } from "../../style.ts";
import { type Extent, extentOf, extentOfItems, type Fit, fitInto, heightOf, scaleInto, widthOf } from "../fit.ts";
import { type Picture, SPECK } from "../picture.ts";
import { seenArea } from "../targets.ts";
import { UNDER, underLines } from "./captions.ts";
import { clipped, focusOf, LEAST, segmentIn, windowAround, windowOn } from "./close-up.ts";
import { HIGHEST, LOCATOR } from "./locator.ts";
import { CORNER, isShape } from "./recognised.ts";
import type { Scene } from "./scene.ts";
import { reachOf } from "./screws.ts";
import { withoutSpecksIn } from "./specks.ts";

/** Room for balloons beside the picture, and above and below it, where few stand. */
const BESIDE = 27;
const ABOVE = 16;
const inner = ({ x, y, width, height }: Frame): Frame => ({
  x: x + BESIDE,
  y: y + ABOVE,
  width: Math.max(1, width - 2 * BESIDE),
  height: Math.max(1, height - 2 * ABOVE),
});
/** Small units are not blown up beyond half their size. */
export const LARGEST = 36 / UNITS_PER_INCH;
/** So much of the largest size is enough to keep that of the picture before. */
const KEPT = 0.7;
/** Hardware is drawn so large, no larger: more of what is around it tells more. In points. */
const ENOUGH = 20;
/** So much of each direction of the edges, as a share of the picture. */
const EACH = 0.25;

/** What does not depend on the frame. */
export interface Taken {
  readonly build: Build;
  readonly step: Step;
  readonly scene: Scene;
  readonly view: View;
  readonly extent: Extent;
  readonly picture: Picture;
  readonly faces: readonly VisibleFace[];
  /** Ids of what is new and stands behind the rest, whose hidden lines are drawn. */
  readonly behind: ReadonlySet<string>;
  /** Where only what is around something is drawn: that, and what is said below; and what is small beside it, where that is not the same whole. */
  readonly close?: { readonly focus: Extent; readonly words: readonly string[]; readonly whole?: Taken };
}

/** What is drawn: the whole, or the surroundings of what is new with a small picture of the whole beside them. */
export interface Shot {
  readonly frame: Frame;
  readonly fit: Fit;
  readonly picture: Picture;
  readonly faces: readonly VisibleFace[];
  /** In the plane of view; null for the whole. */
  readonly window: Extent | null;
}

/** `isWhole`: nothing is left out. */
export function shotOf(taken: Taken, frame: Frame, scale: number, isWhole = false): Shot {
  const { step, scene, view, extent, picture, faces, close } = taken;
  if (close?.whole) {
    const lines = underLines(close.words);
    const room = { ...frame, width: frame.width - LOCATOR.width - LOCATOR.gap };
    const main = { ...room, height: Math.min(frame.height - lines, HIGHEST) };
    const window = windowAround(close.focus, extent, main, LARGEST);
    const fit = fitInto(window.extent, main, window.scale);
    const shown = clipped(withoutSpecks(picture, window.scale), faces, window.extent);
    return { frame: main, fit, ...shown, window: window.extent };
  }
  const focus = close
    ? close.focus
    : isWhole || step.shows.as
      ? null
      : focusOf(scene, view, scale, (id) => seenArea(faces, id, scale));
  const width = frame.width - LOCATOR.width - LOCATOR.gap;
  const under = close ? underLines(close.words) : UNDER;
  const main = { ...frame, width, height: Math.min(frame.height - under, HIGHEST) };
  const tells = (place: Extent): boolean => {
    const inside = picture.lines
      .filter(({ id }) => !scene.hardware.has(id))
      .flatMap(({ visible }) => visible.flatMap((run) => segmentIn(place, run)));
    return isShape(inside, CORNER, EACH * Math.min(widthOf(place), heightOf(place)));
  };
  // Of parts their own edges tell; of hardware those of what is around it.
  const alone = scene.items.every(({ id }) => !scene.fresh.has(id) || scene.hardware.has(id));
  const size = focus ? Math.max(widthOf(focus), heightOf(focus)) : 0;
  const largest = alone ? Math.min(LARGEST, Math.max(ENOUGH / Math.max(1, size), LEAST * scale)) : LARGEST;
  const window = focus && windowOn(focus, extent, main, { scale, largest, tells: alone ? tells : () => true });
  const clean = withoutSpecks(picture, window?.scale ?? scale);
  if (!window) return { frame, fit: fitInto(extent, inner(frame), scale), picture: clean, faces, window: null };
  const fit = fitInto(window.extent, main, window.scale);
  return { frame: main, fit, ...clipped(clean, faces, window.extent), window: window.extent };
}

/** Without what is too short on the page at this scale. */
function withoutSpecks(picture: Picture, scale: number): Picture {
  const least = SPECK.step / scale;
  const lines = picture.lines.map((line) => ({
    ...line,
    visible: withoutSpecksIn(line.visible, least),
    hidden: withoutSpecksIn(line.hidden, least),
  }));
  return { ...picture, lines };
}

export function sceneExtent({ items, screws }: Scene, view: View): Extent {
  const { low, high } = extentOfItems(items, view);
  return extentOf([low, high, ...screws.flatMap(reachOf).map((p) => picturePoint(view, p))]);
}

/** Where a frame is as wide, one higher than this makes the picture no larger. */
export function highestFor(extent: Extent, width: number): number {
  const scale = Math.min(LARGEST, (width - 2 * BESIDE) / Math.max(1, widthOf(extent)));
  return heightOf(extent) * scale + 2 * ABOVE;
}

/** The size of the picture before, while it goes in and fills most of what it could. */
export function sizeFor(extent: Extent, frame: Frame, before: number | null): number {
  const most = Math.min(LARGEST, scaleInto(extent, inner(frame)));
  return before !== null && before <= most && before >= KEPT * most ? before : most;
}
