/** What is on a drawing already, so that what comes next finds a free place. Points, y down. */
import type { Frame } from "../style.ts";
import type { Spot } from "./drawing.ts";

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Segment = readonly [Spot, Spot];

export const boxAround = (x: number, y: number, width: number, height: number): Box => ({
  left: x - width / 2,
  top: y - height / 2,
  right: x + width / 2,
  bottom: y + height / 2,
});
export const grown = (b: Box, by: number): Box => ({
  left: b.left - by,
  top: b.top - by,
  right: b.right + by,
  bottom: b.bottom + by,
});
export const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Whether a segment passes through a box. Asked a million times for one plan: nothing is unpacked or kept in lists. */
export function passes(segment: Segment, b: Box): boolean {
  const x1 = segment[0][0];
  const x2 = segment[1][0];
  if (x1 <= b.left ? x2 <= b.left : x1 >= b.right && x2 >= b.right) return false;
  const y1 = segment[0][1];
  const y2 = segment[1][1];
  if (y1 <= b.top ? y2 <= b.top : y1 >= b.bottom && y2 >= b.bottom) return false;
  const dx = x2 - x1;
  const dy = y2 - y1;
  if (dx === 0 || dy === 0) return true;
  const s = (b.left - x1) / dx;
  const t = (b.right - x1) / dx;
  const u = (b.top - y1) / dy;
  const v = (b.bottom - y1) / dy;
  return Math.max(0, Math.min(s, t), Math.min(u, v)) < Math.min(1, Math.max(s, t), Math.max(u, v));
}

/** Whether two segments cross; ends that only touch do not count. */
export function crosses(one: Segment, other: Segment): boolean {
  const a = one[0];
  const b = one[1];
  const c = other[0];
  const d = other[1];
  return turn(a, b, c) * turn(a, b, d) < -1e-9 && turn(c, d, a) * turn(c, d, b) < -1e-9;
}

const turn = (p: Spot, q: Spot, r: Spot): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

const CELL = 24;

export class Plate {
  readonly frame: Frame;
  /** Texts and signs: nothing else may stand there. */
  private readonly boxes: Box[] = [];
  /** Those that may go elsewhere again. */
  private readonly loose: Box[] = [];
  /** Leaders and dimension lines: not to be crossed. */
  private readonly leaders: Segment[] = [];
  /** Lines of the picture, in the cells of a grid that they pass through. */
  private readonly cells = new Map<number, Entry[]>();
  private searches = 0;

  constructor(frame: Frame) {
    this.frame = frame;
  }

  addBox(box: Box): void {
    this.boxes.push(box);
  }
  addLoose(box: Box): void {
    this.loose.push(box);
  }
  removeLoose(box: Box): void {
    remove(this.loose, box);
  }
  addLeader(line: Segment): void {
    this.leaders.push(line);
  }
  removeLeader(line: Segment): void {
    remove(this.leaders, line);
  }
  addLine(line: Segment): void {
    const entry = { line, seen: 0 };
    eachCell(around(line), (key, cellBox) => {
      if (!passes(line, cellBox)) return;
      const cell = this.cells.get(key);
      if (cell) cell.push(entry);
      else this.cells.set(key, [entry]);
    });
  }

  /** Whether the box lies in the frame and on no other, and no leader passes through it. */
  isFree(box: Box): boolean {
    return this.isOpen(box) && this.isClear(box);
  }

  /** Whether it lies in the frame and on nothing that stays where it is. */
  isOpen(box: Box): boolean {
    const { x, y, width, height } = this.frame;
    if (box.left < x || box.top < y || box.right > x + width || box.bottom > y + height) return false;
    return !anyOf(this.boxes, box, meets);
  }

  /** Whether it is clear of what may go elsewhere, and of leaders. */
  isClear(box: Box): boolean {
    return !anyOf(this.loose, box, meets) && !this.isLed(box);
  }

  /** Whether a leader or a line of a dimension passes through the box. */
  isLed(box: Box): boolean {
    return anyOf(this.leaders, box, passes);
  }

  /** How many lines of the picture pass through the box. */
  linesThrough(box: Box): number {
    return this.count(box, box, passes);
  }

  /** Whether a leader would pass through a text or cross another leader. */
  blocks(line: Segment): boolean {
    return this.bars(line) || this.hinders(line);
  }

  /** Whether it would pass through a text that stays where it is. */
  bars(line: Segment): boolean {
    return anyOf(this.boxes, line, passedBy);
  }

  /** Whether it would pass through what may go elsewhere, or cross another leader. */
  hinders(line: Segment): boolean {
    return anyOf(this.loose, line, passedBy) || anyOf(this.leaders, line, crosses);
  }

  /** How many lines of the picture a leader would cross. */
  linesAcross(leader: Segment): number {
    return this.count(around(leader), leader, crosses);
  }

  /** Where an upright line at x, from one height to another, is crossed by level lines of the picture. */
  crossedAt(x: number, top: number, bottom: number): readonly number[] {
    const found: number[] = [];
    this.count({ left: x, right: x, top, bottom }, x, ([[x1, y1], [x2, y2]]) => {
      if (Math.abs(y1 - y2) < 0.01 && Math.min(x1, x2) < x && x < Math.max(x1, x2) && y1 > top && y1 < bottom)
        found.push(y1);
      return false;
    });
    return found;
  }

  /** How many lines near a box pass a test against something, each asked once. */
  private count<T>(box: Box, other: T, test: (line: Segment, other: T) => boolean): number {
    const search = ++this.searches;
    const [right, bottom] = [cellAt(box.right), cellAt(box.bottom)];
    let count = 0;
    for (let i = cellAt(box.left); i <= right; i++)
      for (let j = cellAt(box.top); j <= bottom; j++)
        for (const entry of this.cells.get(keyOf(i, j)) ?? NONE) {
          if (entry.seen === search) continue;
          entry.seen = search;
          if (test(entry.line, other)) count++;
        }
    return count;
  }
}

/** Nothing is made for the question: it is asked for every place where something might stand. */
function anyOf<T, U>(all: readonly T[], other: U, test: (one: T, other: U) => boolean): boolean {
  for (let i = 0; i < all.length; i += 1) if (test(all[i] as T, other)) return true;
  return false;
}

const passedBy = (box: Box, line: Segment): boolean => passes(line, box);

/** `seen` is the number of the last search that met the line. */
interface Entry {
  readonly line: Segment;
  seen: number;
}
const NONE: readonly Entry[] = [];

/** What lies farther out shares the outermost cells. */
const [FIRST, LAST] = [-100, 1000];
const cellAt = (x: number): number => Math.max(FIRST, Math.min(LAST, Math.floor(x / CELL)));
const keyOf = (i: number, j: number): number => i * 4096 + j;

/** With each cell's box, a point larger on every side for rounding. */
function eachCell(b: Box, visit: (key: number, box: Box) => void): void {
  const from = (i: number): number => (i === FIRST ? -Infinity : i * CELL - 1);
  const to = (i: number): number => (i === LAST ? Infinity : (i + 1) * CELL + 1);
  for (let i = cellAt(b.left); i <= cellAt(b.right); i++)
    for (let j = cellAt(b.top); j <= cellAt(b.bottom); j++)
      visit(keyOf(i, j), { left: from(i), right: to(i), top: from(j), bottom: to(j) });
}

const around = ([[x1, y1], [x2, y2]]: Segment): Box => ({
  left: Math.min(x1, x2),
  top: Math.min(y1, y2),
  right: Math.max(x1, x2),
  bottom: Math.max(y1, y2),
});

function remove<T>(list: T[], item: T): void {
  const at = list.indexOf(item);
  if (at >= 0) list.splice(at, 1);
}
