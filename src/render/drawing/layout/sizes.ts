/** Below the board: the sizes of the parts in which no more than a mark goes in. */
import type { Item } from "../../document.ts";
import { BLACK, GREY } from "../../palette.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";

export interface Sized {
  readonly mark: string;
  /** As it is printed. */
  readonly size: string;
}

const SIZE = 10;
const ROW = 18;
const GAP = 14;
const BETWEEN = 4;
const HEAD = "Sizes:";

/** Those of which no piece with its size is drawn, each once; where pieces of one mark differ, with how many are of a size: "K (2)". */
export function unsized(parts: readonly (Sized & { readonly isTold: boolean })[]): readonly Sized[] {
  const told = new Set(parts.filter(({ isTold }) => isTold).map(keyOf));
  const rest = new Map(parts.filter((part) => !told.has(keyOf(part))).map((part) => [keyOf(part), part] as const));
  const count = (key: string): number => parts.filter((part) => keyOf(part) === key).length;
  const differs = (mark: string): boolean => new Set(parts.flatMap((p) => (p.mark === mark ? [p.size] : []))).size > 1;
  return [...rest]
    .sort(([, a], [, b]) => (a.mark < b.mark ? -1 : a.mark > b.mark ? 1 : 0))
    .map(([key, { mark, size }]) => ({ mark: differs(mark) ? `${mark} (${count(key)})` : mark, size }));
}

const keyOf = ({ mark, size }: Sized): string => `${mark} ${size}`;

interface Entry extends Sized {
  readonly x: number;
  readonly row: number;
}

function entries(all: readonly Sized[], pen: Pen, width: number): readonly Entry[] {
  let [x, row] = [pen.measure(HEAD, "regular", SIZE) + 10, 0];
  return all.map((each): Entry => {
    const wide = pen.measure(each.mark, "bold", SIZE) + BETWEEN + pen.measure(each.size, "regular", SIZE) + GAP;
    if (x + wide - GAP > width) [x, row] = [0, row + 1];
    const entry = { ...each, x, row };
    x += wide;
    return entry;
  });
}

/** How high the list is, at a width. */
export const sizesHeight = (all: readonly Sized[], pen: Pen, width: number): number =>
  all.length === 0 ? 0 : ((entries(all, pen, width).at(-1)?.row ?? 0) + 1) * ROW;

/** The list with its top at the frame's. */
export function drawSizes(all: readonly Sized[], pen: Pen, { x, y, width }: Frame): readonly Item[] {
  if (all.length === 0) return [];
  const text = (left: number, row: number, value: string, font: "regular" | "bold", ink = BLACK): Item => ({
    ...{ kind: "text", x: x + left, y: y + row * ROW + ROW / 2 + 3.3, text: value, font, size: SIZE, ink },
    width: pen.measure(value, font, SIZE),
  });
  return [
    text(0, 0, HEAD, "regular", GREY),
    ...entries(all, pen, width).flatMap(({ mark, size, x: left, row }) => [
      text(left, row, mark, "bold"),
      text(left + pen.measure(mark, "bold", SIZE) + BETWEEN, row, size, "regular"),
    ]),
  ];
}
