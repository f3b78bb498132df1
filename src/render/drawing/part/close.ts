/** Where a face has many edges too short to be seen at its scale, as box joints have: one place of it, some times larger, in a circle. */
import type { Item } from "../../document.ts";
import type { Pen, Spot } from "../drawing.ts";
import { heading } from "../ink.ts";
import type { Plate, Segment } from "../plate.ts";
import { within } from "../step/circle.ts";
import { enlarged } from "../step/enlarge.ts";
import { freePlace } from "../step/free-place.ts";
import { OUTLINE } from "../strokes.ts";

/** In points: shorter edges are not told apart, and so long are they drawn; shorter ones still are rounding. */
const [SHORT, CLEAR, SPECK] = [4, 9, 0.4] as const;
/** So many make a row that is worth it. */
const MANY = 16;
const [LEAST_TIMES, MOST_TIMES] = [3, 6] as const;
const RADII = [36, 30] as const;

/** Fingers lie along the part or across it; what is drawn for a curve turns from one bit to the next. */
const isLevel = ([[ax, ay], [bx, by]]: Segment): boolean =>
  Math.min(Math.abs(ax - bx), Math.abs(ay - by)) < SLOPE * Math.max(Math.abs(ax - bx), Math.abs(ay - by));
const SLOPE = 0.02;

/** `lines`: what is seen of the face on the page; `ground`: 1 where something is drawn, else 0. */
export function closeOn(
  lines: readonly Segment[],
  plate: Plate,
  pen: Pen,
  ground: (spot: Spot) => number,
): readonly Item[] {
  const edges = lines
    .map((line) => ({ line, long: heading(...line).distance }))
    .filter(({ line, long }) => long < SHORT && long > SPECK && isLevel(line));
  if (edges.length < MANY) return [];
  const short = edges.map(({ line }) => line);
  const usual = edges.toSorted((a, b) => a.long - b.long)[Math.floor(edges.length / 2)]?.long ?? SHORT;
  const times = Math.max(LEAST_TIMES, Math.min(MOST_TIMES, Math.ceil(CLEAR / usual)));
  for (const radius of RADII) {
    const spots = short
      .map(([[ax, ay], [bx, by]]): Spot => [(ax + bx) / 2, (ay + by) / 2])
      .map((at) => ({ at, seen: short.filter((line) => within(line, at, radius / times).length > 0).length }));
    const { at } = spots.reduce((best, one) => (one.seen > best.seen ? one : best));
    const centre = freePlace(at, radius, times, { plate, ground }, false);
    // A line to it would cross the other view; there is no other circle.
    if (centre)
      return enlarged(
        { at, centre, radius, times },
        { fills: [], strokes: [{ lines, stroke: OUTLINE }] },
        plate,
        pen,
        false,
      );
  }
  return [];
}
