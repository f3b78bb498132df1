/** Beside a picture of some surroundings: the whole, small, with a rectangle round what the picture shows. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Point2, VisibleFace } from "../../../geometry/types.ts";
import type { Item, Stroke } from "../../document.ts";
import { BLACK, METAL } from "../../palette.ts";
import { rectangle } from "../../shapes.ts";
import type { Frame } from "../../style.ts";
import type { Spot } from "../drawing.ts";
import { type Extent, extentOf, fitInto, scaleInto } from "../fit.ts";
import { heading, onPage, strokes } from "../ink.ts";
import { type Picture, tints } from "../picture.ts";
import type { Segment } from "../plate.ts";
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
/** Runs so near to each other, in points, and turned so little, lie in one line. */
const NEAR = 0.3;
const TURN = 0.02;

/** The frame of the picture, with the locator beside its top. */
export function located(
  main: Frame,
  window: Extent,
  whole: { readonly extent: Extent; readonly picture: Picture; readonly faces: readonly VisibleFace[] },
  { fresh, hardware }: Pick<Scene, "fresh" | "hardware">,
  view: View,
  arms: Scene["arms"] = [],
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
  const lines = joinedUp(
    onPage(
      fit,
      picture.lines.flatMap(({ visible }) => visible),
    ),
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
    ...strokes(
      arms.map(([from, to]): Segment => [fit.spot(view, from), fit.spot(view, to)]),
      ROUND,
    ),
    ...strokes(onPage(fit, sides), ROUND),
    rectangle(main.x, main.y, main.width, main.height, { stroke: NARROW }),
  ];
}

/** Runs in one line that lie end to end as one: an edge between dovetails is many short ones. In points. */
export function joinedUp(all: readonly Segment[]): readonly Segment[] {
  const lines = new Map<string, { readonly at: Spot; readonly way: Spot; readonly runs: [number, number][] }>();
  for (const [a, b] of all) {
    const { along, distance } = heading(a, b);
    if (distance === 0) continue;
    const turned = along[0] < -TURN || (Math.abs(along[0]) <= TURN && along[1] < 0);
    const way: Spot = turned ? [-along[0], -along[1]] : [along[0], along[1]];
    const aside = a[1] * way[0] - a[0] * way[1];
    const key = [way[0] / TURN, way[1] / TURN, aside / NEAR].map(Math.round).join();
    const line = lines.get(key) ?? { at: a, way, runs: [] };
    const ends = [a, b].map(([x, y]) => (x - line.at[0]) * line.way[0] + (y - line.at[1]) * line.way[1]);
    line.runs.push([Math.min(...ends), Math.max(...ends)]);
    lines.set(key, line);
  }
  return [...lines.values()].flatMap(({ at, way, runs }) => {
    const joined: [number, number][] = [];
    for (const [from, to] of runs.sort((a, b) => a[0] - b[0])) {
      const last = joined.at(-1);
      if (last && from <= last[1] + NEAR) last[1] = Math.max(last[1], to);
      else joined.push([from, to]);
    }
    const spot = (by: number): Spot => [at[0] + way[0] * by, at[1] + way[1] * by];
    return joined.map(([from, to]): Segment => [spot(from), spot(to)]);
  });
}
