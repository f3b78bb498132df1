import type { PictureItem, Point2, Vec } from "../types.ts";
import { dot, plus } from "../vec.ts";
import { drawnOnce, type Run } from "./coincident.ts";
import { realEdges } from "./edges.ts";
import { type Placed, Stage, shiftOf, stretch } from "./stage.ts";
import type { View } from "./view.ts";

export interface HiddenLineOptions {
  /** Whether hidden runs are worked out too; without, `hidden` stays empty. */
  readonly hidden?: boolean;
  /** Runs shorter than this, in picture units, are dropped. */
  readonly shortest?: number;
  /** Lines no farther apart than this, in picture units, are one; 0.01 mm when nothing is said. */
  readonly near?: number;
}

/**
 * The picture of the items' real edges, what lies behind something else apart. One entry for each item, in their order; of
 * edges that coincide in the picture the first item's is drawn, and a visible one before a hidden one. Runs are sorted by
 * their coordinates.
 */
export function hiddenLines(
  items: readonly Placed[],
  view: View,
  options: HiddenLineOptions = {},
  stage = new Stage(items, view),
): readonly PictureItem[] {
  const { shortest = 0, near = 160 } = options;
  const runs: Run[] = [];
  items.forEach((item, index) => {
    const shift = shiftOf(item);
    for (const edge of realEdges(item.solid)) {
      if (edge.smooth && dot(edge.smooth[0], view.towards) * dot(edge.smooth[1], view.towards) > 0) continue;
      const [p, q]: [Vec, Vec] = [plus(edge.from, shift), plus(edge.to, shift)];
      const [a, b] = stretch(view, p, q, [0, 1]);
      if (Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) <= near) continue; // seen end on
      const { seen, hidden } = stage.look(p, q);
      const add = (rank: number, run: readonly [Point2, Point2]): void => {
        runs.push({ from: run[0], to: run[1], rank });
      };
      for (const t of seen) add(index, stretch(view, p, q, t));
      if (options.hidden) for (const t of hidden) add(items.length + index, stretch(view, p, q, t));
    }
  });
  const visible = items.map((): [Point2, Point2][] => []);
  const hidden = items.map((): [Point2, Point2][] => []);
  for (const { from, to, rank } of drawnOnce(runs, near)) {
    const [u, v] = [to[0] - from[0], to[1] - from[1]];
    if (u * u + v * v < shortest * shortest) continue;
    (rank < items.length ? visible[rank] : hidden[rank - items.length])?.push([from, to]);
  }
  return items.map(({ id }, i) => ({ id, visible: visible[i] ?? [], hidden: hidden[i] ?? [] }));
}
