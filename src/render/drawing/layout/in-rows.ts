/** Lists below a board: a head, and behind it entries one after another, in as many rows as they take. */
import type { Item } from "../../document.ts";
import { BLACK, GREY } from "../../palette.ts";
import type { Pen } from "../drawing.ts";

export const SIZE = 10;
export const ROW = 18;
/** From one entry to the next. */
const GAP = 14;

/** Where an entry stands: from the left of the list, and in which row. */
export interface InRow<T> {
  readonly entry: T;
  readonly x: number;
  readonly row: number;
}

/** `wideOf`: an entry without what parts it from the next. */
export function inRows<T>(
  all: readonly T[],
  wideOf: (entry: T) => number,
  { head, pen, width }: { readonly head: string; readonly pen: Pen; readonly width: number },
): readonly InRow<T>[] {
  let [x, row] = [pen.measure(head, "regular", SIZE) + 10, 0];
  return all.map((entry): InRow<T> => {
    const wide = wideOf(entry) + GAP;
    if (x + wide - GAP > width) [x, row] = [0, row + 1];
    const set = { entry, x, row };
    x += wide;
    return set;
  });
}

/** The middle of a row, in a list with its top at y. */
export const middleOf = (y: number, row: number): number => y + row * ROW + ROW / 2;

export const word = (
  pen: Pen,
  text: string,
  [x, middle]: readonly [number, number],
  { font = "regular", ink = BLACK }: { readonly font?: "regular" | "bold"; readonly ink?: typeof BLACK } = {},
): Item => ({
  ...{ kind: "text", x, y: middle + 3.3, text, font, size: SIZE, ink },
  width: pen.measure(text, font, SIZE),
});

export const headOf = (pen: Pen, text: string, x: number, y: number): Item =>
  word(pen, text, [x, middleOf(y, 0)], { ink: GREY });
