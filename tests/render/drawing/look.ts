/** What a severe reader of a drawing checks: nothing outside the frame, no text on text, no line through a text. */
import type { Item } from "../../../src/render/document.ts";

export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
type PathItem = Extract<Item, { kind: "path" }>;
type TextItem = Extract<Item, { kind: "text" }>;

export const leaves = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item) => (item.kind === "group" ? leaves(item.items) : [item]));
export const paths = (items: readonly Item[]): readonly PathItem[] =>
  leaves(items).filter((i): i is PathItem => i.kind === "path");
export const texts = (items: readonly Item[]): readonly TextItem[] =>
  leaves(items).filter((i): i is TextItem => i.kind === "text");
export const words = (items: readonly Item[]): readonly string[] => texts(items).map(({ text }) => text);

/** From the baseline to the capitals; letters below the line and fraction bars reach a little farther. */
export function rectOf({ x, y, width, size, turn = 0 }: TextItem): Rect {
  const high = size * 0.66;
  return turn === 90
    ? { left: x - high, top: y - width, right: x, bottom: y }
    : { left: x, top: y - high, right: x + width, bottom: y };
}

export function pointsOf({ steps }: PathItem): readonly (readonly [number, number])[] {
  return steps.flatMap((s): (readonly [number, number])[] => (s.to === "close" ? [] : [[s.x, s.y]]));
}

export function outside(
  items: readonly Item[],
  frame: { x: number; y: number; width: number; height: number },
): unknown[] {
  const out = ([x, y]: readonly [number, number]) =>
    x < frame.x - 0.5 || x > frame.x + frame.width + 0.5 || y < frame.y - 0.5 || y > frame.y + frame.height + 0.5;
  return leaves(items).filter((item) => {
    if (item.kind === "path") return pointsOf(item).some(out);
    if (item.kind !== "text") return false;
    const r = rectOf(item);
    return out([r.left, r.top]) || out([r.right, r.bottom]);
  });
}

const overlap = (a: Rect, b: Rect): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.1 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.1;

/** Pairs of texts that overlap. */
export function clashes(items: readonly Item[]): readonly string[] {
  const all = texts(items);
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b) => (overlap(rectOf(a), rectOf(b)) ? [`${a.text} on ${b.text}`] : [])),
  );
}

export const segmentsOf = (item: PathItem): readonly (readonly [number, number, number, number])[] => {
  const out: [number, number, number, number][] = [];
  let at: readonly [number, number] = [0, 0];
  for (const step of item.steps) {
    if (step.to === "line") out.push([at[0], at[1], step.x, step.y]);
    if (step.to !== "close") at = [step.x, step.y];
  }
  return out;
};

/** Texts with a line through them that no white ground covers. */
export function struck(items: readonly Item[]): readonly string[] {
  const lines = paths(items)
    .filter(({ stroke, fill }) => stroke !== undefined && fill === undefined)
    .flatMap(segmentsOf);
  return texts(items)
    .filter((text) => {
      const r = rectOf(text);
      return lines.some(([x1, y1, x2, y2]) =>
        Array.from({ length: 101 }, (_, i) => i / 100).some((t) => {
          const [x, y] = [x1 + (x2 - x1) * t, y1 + (y2 - y1) * t];
          return x > r.left + 0.2 && x < r.right - 0.2 && y > r.top + 0.2 && y < r.bottom - 0.2;
        }),
      );
    })
    .map(({ text }) => text);
}

/** Pairs of circles that overlap: balloons, rings, numbers. */
export function circlesThatMeet(items: readonly Item[], least: number): number {
  const circles = paths(items)
    .filter(({ steps }) => steps.filter((s) => s.to === "curve").length === 4)
    .map((path) => {
      const [xs, ys] = [pointsOf(path).map((p) => p[0]), pointsOf(path).map((p) => p[1])];
      return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
    })
    .filter((c) => c.bottom - c.top >= least);
  return circles.reduce((n, a, i) => n + circles.slice(i + 1).filter((b) => overlap(a, b)).length, 0);
}
