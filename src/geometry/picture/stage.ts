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

/** How far a shadow may reach beyond its bounds where its outline is pointed; units of 1/16 µm. */
const TIP = 4096;

/** A rectangle of the picture, in front of `farthest`. */
interface Room {
  readonly low: Point2;
  readonly high: Point2;
  readonly farthest: number;
}

/** A shadow in the cells of a grid; `asked` is the number of the last question that met it. */
interface Entry {
  readonly shadow: Shadow;
  asked: number;
}

export class Stage {
  readonly view: View;
  private readonly low: Point2;
  private readonly cell: Point2;
  private readonly cells: Entry[][];
  private readonly count: number;
  private questions = 0;

  constructor(items: readonly Placed[], view: View) {
    this.view = view;
    const shadows = items.flatMap((item) => item.solid.pieces.map((piece) => shadow(piece, view, shiftOf(item))));
    this.count = Math.max(1, Math.min(48, Math.ceil(2 * Math.sqrt(shadows.length))));
    const low: [number, number] = [Infinity, Infinity];
    const high: [number, number] = [-Infinity, -Infinity];
    for (const s of shadows)
      for (const axis of [0, 1] as const) {
        low[axis] = Math.min(low[axis], s.low[axis]);
        high[axis] = Math.max(high[axis], s.high[axis]);
      }
    this.low = low;
    this.cell = [(high[0] - low[0]) / this.count || 1, (high[1] - low[1]) / this.count || 1];
    this.cells = Array.from({ length: this.count * this.count }, () => []);
    for (const s of shadows) {
      const entry = { shadow: s, asked: 0 };
      const [right, top] = [this.column(s.high[0]), this.row(s.high[1])];
      for (let i = this.column(s.low[0]); i <= right; i++)
        for (let j = this.row(s.low[1]); j <= top; j++) this.cells[i * this.count + j]?.push(entry);
    }
  }

  /** The shadows that may hide something of the line from p to q (places in space). */
  private near(p: Vec, q: Vec): Shadow[] {
    const [a, b] = leftToRight(picturePoint(this.view, p), picturePoint(this.view, q));
    const farthest = Math.min(nearness(this.view, p), nearness(this.view, q));
    const slope = b[0] > a[0] ? (b[1] - a[1]) / (b[0] - a[0]) : 0;
    const room: Room = {
      low: [a[0] - TIP, Math.min(a[1], b[1]) - TIP],
      high: [b[0] + TIP, Math.max(a[1], b[1]) + TIP],
      farthest,
    };
    const out: Shadow[] = [];
    this.questions += 1;
    const last = this.column(b[0]);
    for (let i = this.column(a[0]); i <= last; i++) {
      // The stretch of the line over this column, and one cell more for rounding.
      const left = Math.max(a[0], this.low[0] + i * this.cell[0]);
      const right = Math.min(b[0], this.low[0] + (i + 1) * this.cell[0]);
      const [from, to] = b[0] > a[0] ? [a[1] + slope * (left - a[0]), a[1] + slope * (right - a[0])] : [a[1], b[1]];
      const [bottom, top] = [this.row(Math.min(from, to)) - 1, this.row(Math.max(from, to)) + 1];
      this.gather(i, Math.max(0, bottom), Math.min(this.count - 1, top), room, out);
    }
    return out;
  }

  /** The shadows that reach into a rectangle of the picture and in front of `farthest`. */
  within(low: Point2, high: Point2, farthest: number): Shadow[] {
    const out: Shadow[] = [];
    this.questions += 1;
    const [right, bottom, top] = [this.column(high[0]), this.row(low[1]), this.row(high[1])];
    for (let i = this.column(low[0]); i <= right; i++) this.gather(i, bottom, top, { low, high, farthest }, out);
    return out;
  }

  /** What stands in some rows of a column, reaches into the room, and was not met before by the same question. */
  private gather(column: number, from: number, to: number, room: Room, out: Shadow[]): void {
    for (let j = from; j <= to; j++)
      for (const entry of this.cells[column * this.count + j] as Entry[]) {
        if (entry.asked === this.questions) continue;
        entry.asked = this.questions;
        if (reaches(entry.shadow, room)) out.push(entry.shadow);
      }
  }

  /** What is seen and what is hidden of the line from p to q, as parameters 0 to 1, merged. */
  look(p: Vec, q: Vec): { readonly seen: Interval[]; readonly hidden: Interval[] } {
    const hidden: Interval[] = [];
    for (const s of this.near(p, q)) {
      const run = hiddenBy(s, p, q);
      if (run) hidden.push(run);
    }
    if (hidden.length === 0) return { seen: [[0, 1]], hidden };
    const covered = merge(hidden, NOTHING);
    return { seen: without([[0, 1]], covered).filter(([a, b]) => b - a > NOTHING), hidden: covered };
  }

  /** Whether anything stands between the point and the eye. */
  hides(p: Vec): boolean {
    return this.near(p, p).some((s) => s.halves.every((h) => dot(h.normal, p) < h.d));
  }

  private column(u: number): number {
    return Math.max(0, Math.min(this.count - 1, Math.floor((u - this.low[0]) / this.cell[0])));
  }
  private row(v: number): number {
    return Math.max(0, Math.min(this.count - 1, Math.floor((v - this.low[1]) / this.cell[1])));
  }
}

const leftToRight = (a: Point2, b: Point2): readonly [Point2, Point2] => (b[0] < a[0] ? [b, a] : [a, b]);

const reaches = (s: Shadow, { low, high, farthest }: Room): boolean =>
  s.nearest > farthest && s.low[0] < high[0] && s.high[0] > low[0] && s.low[1] < high[1] && s.high[1] > low[1];

function hiddenBy({ halves }: Shadow, p: Vec, q: Vec): Interval | null {
  let start = 0;
  let end = 1;
  for (const { normal, d } of halves) {
    const a = dot(normal, p) - d;
    const b = dot(normal, q) - d;
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
