import { circlePoint } from "../../src/geometry/angle.ts";
import type { Item, Page } from "../../src/render/document.ts";
import { leaves } from "../../src/render/shapes.ts";

export type Text = Extract<Item, { kind: "text" }>;

export const textsOf = (items: readonly Item[]): Text[] =>
  leaves(items).filter((leaf): leaf is Text => leaf.kind === "text");

/** The items of one kind, in whatever groups they stand. */
export const itemsOf = <K extends Item["kind"]>(items: readonly Item[], kind: K): Extract<Item, { kind: K }>[] =>
  items.flatMap((item) => [
    ...(item.kind === kind ? [item as Extract<Item, { kind: K }>] : []),
    ...(item.kind === "group" ? itemsOf(item.items, kind) : []),
  ]);

/** Everything that a page says, line by line. */
export const wordsOf = (page: Page): string =>
  textsOf(page.items)
    .map(({ text }) => text)
    .join("\n");

/** Corners of the ink of a text: capitals and a little below the baseline. */
function corners({ x, y, width, size, turn = 0 }: Text): (readonly [number, number])[] {
  const [cos, sin] = circlePoint(turn, 360);
  return (
    [
      [0, 0.18],
      [width, 0.18],
      [width, -0.66],
      [0, -0.66],
    ] as const
  ).map(([u, v]) => [x + u * cos + v * size * sin, y - u * sin + v * size * cos]);
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boxOf(text: Text): Box {
  const [xs, ys] = [corners(text).map(([x]) => x), corners(text).map(([, y]) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Pairs of texts whose ink meets by more than a tenth of a point. */
export function overlaps(page: Page): string[] {
  const placed = textsOf(page.items)
    .filter(({ text }) => text.trim() !== "")
    .map((text) => ({ text, box: boxOf(text) }))
    .sort((a, b) => a.box.top - b.box.top);
  const found: string[] = [];
  placed.forEach((a, i) => {
    for (const b of placed.slice(i + 1)) {
      if (b.box.top > a.box.bottom - 0.1) break;
      if (a.box.left < b.box.right - 0.1 && b.box.left < a.box.right - 0.1)
        found.push(`page ${page.number}: "${a.text.text}" and "${b.text.text}"`);
    }
  });
  return found;
}
