/** A board or sheet drawn in characters, its length along the lines, as the plan draws it. */
import type { Layout, Rectangle } from "../../solve/build.ts";
import { type Length, toNumber } from "../../units/index.ts";

/** A character cell is about twice as high as it is wide. */
const CELL = 0.5;
const LEAST_ROWS = 4;
const MOST_ROWS = 40;

/** Which of its four neighbours a line on a cell leads to: bits 1 up, 2 right, 4 down, 8 left. */
const LINES = [" ", "╵", "╶", "└", "╷", "│", "┌", "├", "╴", "┘", "─", "┴", "┐", "┤", "┬", "┼"] as const;

/** A text that lies in the drawing, for colour. */
export interface PictureLine {
  readonly text: string;
  /** Where marks of parts stand in it: from, up to. */
  readonly marks: readonly (readonly [number, number])[];
}

/** `columns` wide at most. Offcuts worth keeping are filled with dots. */
export function picture(layout: Layout, columns: number): readonly PictureLine[] {
  const [wide, long] = [toNumber(layout.width), toNumber(layout.length)];
  const across = Math.max(20, columns) - 1;
  const down = Math.min(MOST_ROWS, Math.max(LEAST_ROWS, Math.round(((across * wide) / long) * CELL)));
  const place = (value: Length, whole: number, cells: number): number => Math.round((toNumber(value) / whole) * cells);
  const box = ({ x, y, width, length }: Rectangle) => ({
    top: place(x, wide, down),
    left: place(y, long, across),
    bottom: Math.min(down, Math.round(((toNumber(x) + toNumber(width)) / wide) * down)),
    right: Math.min(across, Math.round(((toNumber(y) + toNumber(length)) / long) * across)),
  });
  const mask = Array.from({ length: down + 1 }, () => new Array<number>(across + 1).fill(0));
  const put = (row: number, column: number, bits: number): void => {
    const line = mask[row];
    if (line) line[column] = (line[column] ?? 0) | bits;
  };
  const frame = ({ top, left, bottom, right }: ReturnType<typeof box>): void => {
    for (let c = left; c < right; c++)
      for (const row of [top, bottom]) {
        put(row, c, 2);
        put(row, c + 1, 8);
      }
    for (let r = top; r < bottom; r++)
      for (const column of [left, right]) {
        put(r, column, 4);
        put(r + 1, column, 1);
      }
  };
  frame({ top: 0, left: 0, bottom: down, right: across });
  const boxes = layout.placements.map((placement) => ({ ...box(placement), mark: placement.mark }));
  for (const each of boxes) frame(each);
  const rows = mask.map((line) => line.map((bits): string => LINES[bits] ?? " "));
  const write = (row: number, from: number, text: string): void => {
    [...text].forEach((letter, i) => {
      const line = rows[row];
      if (line) line[from + i] = letter;
    });
  };
  for (const offcut of layout.offcuts) {
    const { top, left, bottom, right } = box(offcut);
    for (let r = top; r <= bottom; r++) for (let c = left; c <= right; c++) if (rows[r]?.[c] === " ") write(r, c, "·");
  }
  const marks = boxes.flatMap(({ top, left, bottom, right, mark }) => {
    const [row, room] = [Math.floor((top + bottom) / 2), right - left - 1];
    if (room < mark.length) return [];
    const from = left + 1 + Math.floor((room - mark.length) / 2);
    write(row, from, mark);
    return [{ row, at: [from, from + mark.length] as const }];
  });
  return rows.map((line, row) => ({
    text: line.join("").trimEnd(),
    marks: marks
      .filter((each) => each.row === row)
      .map(({ at }) => at)
      .toSorted((a, b) => a[0] - b[0]),
  }));
}
