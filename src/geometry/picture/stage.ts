/** All the shadows of a scene, sorted into the cells of a grid over the picture, so that a line meets only those near it. */
import type { Point2, SceneItem, Vec } from "../types.ts";
import { dot } from "../vec.ts";
import { between, type Interval, merge, without } from "./intervals.ts";
import { type Shadow, shadow } from "./shadow.ts";
import { nearness, picturePoint, type View } from "./view.ts";

/** An item that may be drawn away from its place, by `shift` in units of 1/16 µm. */
export interface Placed extends SceneItem {
  readonly shift?: Vec;
}

export const shiftOf = (item: Placed): Vec => item.shift ?? [0, 0, 0];

/** Runs of a line shorter than this part of it are rounding. */
const NOTHING = 1e-12;

export class Stage {
  readonly view: View;
  private readonly low: Point2;
  private readonly cell: Point2;
  private readonly cells: Shadow[][];
  private readonly count: number;

  constructor(items: readonly Placed[], view: View) {
    this.view = view;
    const shadows = items.flatMap((item) => item.solid.pieces.map((piece) => shadow(piece, view, shiftOf(item))));
    this.count = Math.max(1, Math.min(48, Math.ceil(2 * Math.sqrt(shadows.length))));
    let low: Point2 = [Infinity, Infinity];
    let high: Point2 = [-Infinity, -Infinity];
    for (const s of shadows) {
      low = [Math.min(low[0], s.low[0]), Math.min(low[1], s.low[1])];
      high = [Math.max(high[0], s.high[0]), Math.max(high[1], s.high[1])];
    }
    this.low = low;
    this.cell = [(high[0] - low[0]) / this.count || 1, (high[1] - low[1]) / this.count || 1];
    this.cells = Array.from({ length: this.count * this.count }, () => []);
    for (const s of shadows)
      for (let i = this.column(s.low[0]); i <= this.column(s.high[0]); i++)
        for (let j = this.row(s.low[1]); j <= this.row(s.high[1]); j++) this.cells[i * this.count + j]?.push(s);
  }

  /** The shadows that may hide something of the line from p to q (places in space). */
  near(p: Vec, q: Vec): Set<Shadow> {
    const [a, b] = [picturePoint(this.view, p), picturePoint(this.view, q)].sort((x, y) => x[0] - y[0]);
    const out = new Set<Shadow>();
    if (!a || !b) return out;
    const farthest = Math.min(nearness(this.view, p), nearness(this.view, q));
    const slope = b[0] > a[0] ? (b[1] - a[1]) / (b[0] - a[0]) : 0;
    for (let i = this.column(a[0]); i <= this.column(b[0]); i++) {
      // The stretch of the line over this column, and one cell more for rounding.
      const left = Math.max(a[0], this.low[0] + i * this.cell[0]);
      const right = Math.min(b[0], this.low[0] + (i + 1) * this.cell[0]);
      const ends = b[0] > a[0] ? [a[1] + slope * (left - a[0]), a[1] + slope * (right - a[0])] : [a[1], b[1]];
      const [from, to] = [this.row(Math.min(...ends)) - 1, this.row(Math.max(...ends)) + 1];
      for (let j = Math.max(0, from); j <= Math.min(this.count - 1, to); j++)
        for (const s of this.cells[i * this.count + j] ?? []) if (s.nearest > farthest) out.add(s);
    }
    return out;
  }

  /** The shadows that reach into a rectangle of the picture and in front of `farthest`. */
  within(low: Point2, high: Point2, farthest: number): Set<Shadow> {
    const out = new Set<Shadow>();
    for (let i = this.column(low[0]); i <= this.column(high[0]); i++)
      for (let j = this.row(low[1]); j <= this.row(high[1]); j++)
        for (const s of this.cells[i * this.count + j] ?? [])
          if (
            s.nearest > farthest &&
            s.low[0] < high[0] &&
            s.high[0] > low[0] &&
            s.low[1] < high[1] &&
            s.high[1] > low[1]
          )
            out.add(s);
    return out;
  }

  /** What is seen and what is hidden of the line from p to q, as parameters 0 to 1, merged. */
  look(p: Vec, q: Vec): { readonly seen: Interval[]; readonly hidden: Interval[] } {
    const hidden: Interval[] = [];
    for (const s of this.near(p, q)) {
      const run = hiddenBy(s, p, q);
      if (run) hidden.push(run);
    }
    const covered = merge(hidden, NOTHING);
    return { seen: without([[0, 1]], covered).filter(([a, b]) => b - a > NOTHING), hidden: covered };
  }

  /** Whether anything stands between the point and the eye. */
  hides(p: Vec): boolean {
    for (const s of this.near(p, p)) if (s.halves.every((h) => dot(h.normal, p) < h.d)) return true;
    return false;
  }

  private column(u: number): number {
    return Math.max(0, Math.min(this.count - 1, Math.floor((u - this.low[0]) / this.cell[0])));
  }
  private row(v: number): number {
    return Math.max(0, Math.min(this.count - 1, Math.floor((v - this.low[1]) / this.cell[1])));
  }
}

function hiddenBy({ halves }: Shadow, p: Vec, q: Vec): Interval | null {
  let [start, end] = [0, 1];
  for (const { normal, d } of halves) {
    const [a, b] = [dot(normal, p) - d, dot(normal, q) - d];
    if (a >= 0 && b >= 0) return null;
    if (a < 0 && b < 0) continue;
    const t = a / (a - b);
    if (a >= 0) start = Math.max(start, t);
    else end = Math.min(end, t);
    if (start >= end) return null;
  }
  return end - start > NOTHING ? [start, end] : null;
}

/** The stretch of the line from p to q between two parameters, in the picture. */
export const stretch = (view: View, p: Vec, q: Vec, [a, b]: Interval): readonly [Point2, Point2] => [
  picturePoint(view, between(p, q, a)),
  picturePoint(view, between(p, q, b)),
];
