/** Below the board: the sizes of the parts in which no more than a mark goes in. */
import type { Item } from "../../document.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";
import { headOf, type InRow, inRows, middleOf, ROW, SIZE, word } from "./in-rows.ts";

export interface Sized {
  readonly mark: string;
  /** As it is printed. */
  readonly size: string;
}

/** From a mark to its size. */
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

const entries = (all: readonly Sized[], pen: Pen, width: number): readonly InRow<Sized>[] =>
  inRows(all, ({ mark, size }) => pen.measure(mark, "bold", SIZE) + BETWEEN + pen.measure(size, "regular", SIZE), {
    head: HEAD,
    pen,
    width,
  });

/** How high the list is, at a width. */
export const sizesHeight = (all: readonly Sized[], pen: Pen, width: number): number =>
  all.length === 0 ? 0 : ((entries(all, pen, width).at(-1)?.row ?? 0) + 1) * ROW;

/** The list with its top at the frame's. */
export function drawSizes(all: readonly Sized[], pen: Pen, { x, y, width }: Frame): readonly Item[] {
  if (all.length === 0) return [];
  return [
    headOf(pen, HEAD, x, y),
    ...entries(all, pen, width).flatMap(({ entry: { mark, size }, x: from, row }) => {
      const [left, middle] = [x + from, middleOf(y, row)];
      return [
        word(pen, mark, [left, middle], { font: "bold" }),
        word(pen, size, [left + pen.measure(mark, "bold", SIZE) + BETWEEN, middle]),
      ];
    }),
  ];
}
