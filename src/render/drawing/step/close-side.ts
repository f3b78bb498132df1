/** What screws join, drawn close with what its place is measured from, where what is new is a speck in the whole: the whole is small beside it. */
import { picturePoint, Stage, type View } from "../../../geometry/picture/index.ts";
import type { Solid, Vec } from "../../../geometry/types.ts";
import type { Pen } from "../drawing.ts";
import { type Extent, extentOf, extentOfItems, heightOf, widthOf } from "../fit.ts";
import type { Marked } from "../labels.ts";
import { listed } from "../words.ts";
import { inLines } from "./captions.ts";
import { sizeOf, windowAround } from "./close-up.ts";
import { HIGHEST, LOCATOR } from "./locator.ts";
import { headsSeen, type OtherSide, partsSeen } from "./other-side.ts";
import type { Scene } from "./scene.ts";
import { reachOf } from "./screws.ts";
import { LARGEST } from "./shot.ts";

/** In points: what is smaller in the whole is a speck there. */
const SPECK = 25;
/** What is measured from is shown where what has to be seen gets no more than so many times as large by it. */
const NEAR = 1.6;

/** It is drawn so many times as large, or the whole is shown as well. */
const WORTH = 2.5;
/** So much of what is new is seen, as a share; and what stands beside it leaves so much of that. */
const [SEEN, KEPT] = [0.35, 0.8] as const;

export interface CloseSide {
  readonly view: View;
  readonly scene: Scene;
  /** In the plane of view: what has to be seen. */
  readonly focus: Extent;
  readonly words: readonly string[];
}

export interface Around {
  /** Of the whole, in points for each unit. */
  readonly scale: number;
  /** What is told of the step. */
  readonly text: readonly string[];
  /** From where it is seen, where that is said; and how wide the words may be. */
  readonly caption: string | null;
  readonly pen: Pen;
  readonly width: number;
}

/** Null where the whole shows what is new. */
export function closeSide(
  whole: Scene,
  { view, scene: alone, only }: OtherSide,
  { scale, text, caption, pen, width }: Around,
): CloseSide | null {
  const parts = alone.items.filter(({ id }) => alone.fresh.has(id) && !alone.hardware.has(id));
  if (only === null || alone.screws.length === 0 || parts.length === 0) return null;
  if (parts.some((item) => sizeOf(item) * scale >= SPECK)) return null;
  const { low, high } = extentOfItems(parts, view);
  const driven = alone.screws.flatMap(reachOf).map((p) => picturePoint(view, p));
  const joined = extentOf([low, high, ...driven]);
  if (closeScale(joined, width) < WORTH * scale) return null;
  const seen = (items: readonly Marked[]) => seenOf(items, parts, alone, view);
  const first = seen(alone.items);
  if (first.parts < SEEN) return null;
  const isNear = (item: Marked): boolean => {
    const both = extentOf([joined.low, joined.high, ...near(item, parts).map((p) => picturePoint(view, p))]);
    return widthOf(both) <= NEAR * widthOf(joined) && heightOf(both) <= NEAR * heightOf(joined);
  };
  // What would hide the heads or the parts stays away.
  const from = besides(whole, alone, text)
    .filter(isNear)
    .filter((item) => {
      const now = seen([...alone.items, item]);
      return now.heads >= first.heads && now.parts >= KEPT * first.parts;
    });
  const spots = from.flatMap((item) => near(item, parts).map((p) => picturePoint(view, p)));
  const marks = [...new Set(from.map(({ mark }) => mark))];
  return {
    view,
    scene: {
      ...alone,
      items: [...alone.items, ...from],
      groups: whole.groups,
      beside: new Set(from.map(({ id }) => id)),
    },
    focus: extentOf([joined.low, joined.high, ...spots]),
    words: [...(caption === null ? [] : [caption]), `Only ${listed([only, ...marks])}`].flatMap((each) =>
      inLines(each, width, pen),
    ),
  };
}

/** How large it is drawn, in points for each unit. */
const closeScale = (focus: Extent, width: number): number =>
  windowAround(focus, focus, { x: 0, y: 0, width: width - LOCATOR.width - LOCATOR.gap, height: HIGHEST }, LARGEST)
    .scale;

/** The shares of the heads and of the new parts that are seen among some items. */
function seenOf(items: readonly Marked[], parts: readonly Marked[], { screws }: Scene, view: View) {
  const stage = new Stage(items, view);
  return {
    heads: headsSeen(
      screws.filter(({ isDowel }) => !isDowel),
      stage,
    ),
    parts: partsSeen(parts, stage),
  };
}

/** What stands there and is called by its mark, besides what is joined. */
function besides(whole: Scene, alone: Scene, text: readonly string[]): readonly Marked[] {
  const joined = new Set(alone.items.map(({ mark }) => mark));
  const told = text.join(" ");
  return whole.items.filter(
    ({ mark, id }) =>
      mark !== "" && !joined.has(mark) && !whole.fresh.has(id) && !whole.hardware.has(id) && told.includes(`(${mark})`),
  );
}

/** The corners of what lies across from the parts, where it is nearest to them. */
function near({ solid }: Marked, parts: readonly Marked[]): readonly Vec[] {
  const all = parts.map((part) => part.solid);
  const ranges = ([0, 1, 2] as const).map((i) => across(solid, all, i));
  return [0, 1].flatMap((x) =>
    [0, 1].flatMap((y) => [0, 1].map((z): Vec => [at(ranges, 0, x), at(ranges, 1, y), at(ranges, 2, z)])),
  );
}

const at = (ranges: readonly (readonly [number, number])[], axis: number, end: number): number =>
  ranges[axis]?.[end as 0 | 1] ?? 0;

function across(solid: Solid, parts: readonly Solid[], i: 0 | 1 | 2): readonly [number, number] {
  const [low, high] = [Math.min(...parts.map((part) => part.low[i])), Math.max(...parts.map((part) => part.high[i]))];
  if (solid.low[i] >= high) return [solid.low[i], solid.low[i]];
  if (solid.high[i] <= low) return [solid.high[i], solid.high[i]];
  return [Math.max(low, solid.low[i]), Math.min(high, solid.high[i])];
}
