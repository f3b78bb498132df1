/** What stands in one column of a table, and how it is set. */
import type { Item } from "../document.ts";
import { BLACK, type TextStyle, TYPE } from "../style.ts";
import { baseline, tickBox } from "./atom.ts";
import { type Line, label, paintLine, type Rich, widestPiece } from "./lines.ts";
import { measure, printable } from "./measure.ts";
import type { Need } from "./share-width.ts";

export interface Column {
  readonly head: string;
  /** "length": whole numbers end and fractions begin at one line. "tick": a box to tick. */
  readonly align?: "left" | "right" | "length" | "tick";
  /** Takes the width that is left over. */
  readonly stretch?: boolean;
  readonly style?: TextStyle;
}

/** A column with its place in the table. `axis`: for lengths, from the left edge to where the fractions begin. */
export interface SetColumn {
  readonly column: Column;
  readonly style: TextStyle;
  readonly x: number;
  readonly width: number;
  readonly axis: number;
}

export const plain = (rich: Rich): string => (typeof rich === "string" ? rich : rich.map((run) => run.text).join(""));

/** Text of a length up to the blank before its fraction, and the fraction. */
export function atFraction(text: string): readonly [string, string] {
  const at = text.search(/[0-9]+⁄/);
  return at < 0 ? [text, ""] : [text.slice(0, at), text.slice(at)];
}

/** No word asks for more than this; longer ones are broken. */
const WIDEST_WORD = 110;

/** The width that a column needs, and its axis. */
export function columnNeed(column: Column, style: TextStyle, cells: readonly Rich[]): Need & { readonly axis: number } {
  const width = (text: string): number => measure(printable(text), style.font, style.size);
  const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map(width));
  const head = Math.max(...column.head.split(" ").map((w) => measure(w, TYPE.head.font, TYPE.head.size)));
  if (column.align === "tick")
    return { natural: Math.max(head, style.size), least: Math.max(head, style.size), axis: 0 };
  if (column.align === "length") {
    const split = cells.map((cell) => atFraction(plain(cell)));
    const fraction = widest(split.map(([, part]) => part));
    const all = Math.max(head, widest(split.map(([part]) => part)) + fraction);
    return { natural: all, least: all, axis: all - fraction };
  }
  const natural = Math.max(measure(column.head, TYPE.head.font, TYPE.head.size), widest(cells.map(plain)));
  const words = Math.max(0, ...cells.map((cell) => widestPiece(plain(cell), style)));
  return { natural, least: Math.min(natural, Math.max(head, Math.min(words, WIDEST_WORD))), axis: 0 };
}

/** The items of a cell whose column begins at x, first line at y. */
export function paintCell(set: SetColumn, text: string, lines: readonly Line[], x: number, y: number): Item[] {
  const { column, style, width, axis } = set;
  if (column.align === "tick") return [tickBox(x, y, style)];
  const base = y + baseline(style);
  if (column.align === "length") {
    const [whole, fraction] = atFraction(text);
    return [
      ...(whole === "" ? [] : [label(whole, style, x + axis, base, "right")]),
      ...(fraction === "" ? [] : [label(fraction, style, x + axis, base)]),
    ];
  }
  return lines.flatMap((line, i) => {
    const left = column.align === "right" ? x + width - line.width : x;
    return paintLine(line, style, left, base + i * style.leading);
  });
}

export const bodyStyle = (column: Column): TextStyle => column.style ?? { ...TYPE.body, ink: BLACK };
