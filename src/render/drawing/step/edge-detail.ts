/** An edge that is taken off by less than a picture shows: a corner of the part, some times larger, in a circle beside it. */
import { minus, norm } from "../../../geometry/vec.ts";
import { heading } from "../ink.ts";
import type { Segment } from "../plate.ts";
import { within } from "./circle.ts";
import type { Detail, Shown } from "./detail.ts";
import { freePlace } from "./free-place.ts";
import { seenOf } from "./joint-edges.ts";
import type { Scene } from "./scene.ts";

/** In points: what is wider is seen, and what is not is drawn so wide. */
const SEEN = 7;
const CLEAR = 12;
const TIMES = { least: 4, most: 12 } as const;
const RADII = [38, 30, 24] as const;
const EDGE = "the edge that is taken off";

export const cutsEdges = ({ done = [] }: Scene): boolean => done.some(({ edges }) => edges.length > 0);

/** Null where the picture shows it well enough, or has no room. */
export function edgeDetail({ items, done = [] }: Scene, shown: Shown): Detail | null {
  const { stage, fit } = shown;
  const cut = done.filter(({ edges }) => edges.length > 0);
  const wide = Math.min(...cut.flatMap(({ edges }) => edges.map(({ from, to }) => norm(minus(to, from))))) * fit.scale;
  if (cut.length === 0 || wide >= SEEN) return null;
  const lines = cut.flatMap(({ id, edges }): readonly Segment[] =>
    seenOf(edges, items.find((item) => item.id === id)?.shift ?? [0, 0, 0], stage, fit),
  );
  const times = Math.max(TIMES.least, Math.min(TIMES.most, Math.ceil(CLEAR / wide)));
  for (const radius of RADII) {
    const all = lines
      .flat()
      .map((at) => ({
        at,
        // Of an end more is seen than of the middle: how the edge goes over into the other side.
        worth: lines.filter((line) => within(line, at, radius / times).length > 0).length,
        seen: lines
          .flatMap((line) => within(line, at, radius / times))
          .reduce((sum, run) => sum + heading(...run).distance, 0),
      }))
      .sort((a, b) => b.worth - a.worth || b.seen - a.seen);
    for (const { at } of all) {
      const centre = freePlace(at, radius, times, shown);
      if (centre) return { method: EDGE, at, centre, radius, times };
    }
  }
  return null;
}
