/** Tables: columns as wide as what stands in them, heads and headings that are repeated, rows that are never split nor left alone. */
import type { Item } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, onGrid, RULE, TYPE } from "../style.ts";
import { type Atom, baseline, type Wrap } from "./atom.ts";
import { bodyStyle, type Column, columnNeed, paintCell, plain, type SetColumn } from "./cell.ts";
import { breakLines, type Line, paintLine, type Rich } from "./lines.ts";
import { fewestLines, shareWidth } from "./share-width.ts";

export interface TableOptions {
  readonly columns: readonly Column[];
  /** A text alone is a heading over the rows that follow. */
  readonly rows: readonly (readonly Rich[] | string)[];
  readonly width: number;
  readonly above?: number;
}

const GAP = 14;
const PAD = 4;
/** Where a page is saved by it. */
const CLOSE_PAD = 2;
/** A row with more lines than this is set as several rows. */
const LONGEST_CELL = 24;

/** So high a row, in points, may stand alone: about four lines. */
const HIGH_ROW = 64;

/** A head and its rows; nothing where there are no rows. */
export function table({ columns, rows, width, above = 0 }: TableOptions): Atom[] {
  if (rows.length === 0) return [];
  const set = setColumns(
    columns,
    rows.filter((row) => typeof row !== "string"),
    width,
  );
  const last = set[set.length - 1];
  const right = last === undefined ? width : Math.max(last.x + last.width, 0);
  const head = headRow(set, right);
  const wrap: Wrap = { role: "table", head };
  let group: readonly Wrap[] = [];
  const body = rows.flatMap((row, i): Atom[] => {
    if (typeof row !== "string") return bodyRows(row, set, right).map((atom) => ({ ...atom, within: group }));
    group = [{ role: null, head: headingRow(`${row}, continued`, set.length, right, true) }];
    return [headingRow(row, set.length, right, i === 0)];
  });
  const all = [{ ...head, above }, ...body];
  // Heads and headings keep with what follows. Neither the first nor the last row below one stands alone on a page, nor those of all, unless it is high.
  const isRow = (i: number): boolean => all[i] !== undefined && !all[i].keep;
  const ends = [all.findIndex((_, i) => isRow(i)), all.findLastIndex((_, i) => isRow(i) && i < all.length - 1)];
  const keeps = (i: number): boolean =>
    isRow(i) &&
    (all[i]?.height ?? 0) < HIGH_ROW &&
    (ends.includes(i) || (isRow(i + 1) && !(isRow(i - 1) && isRow(i + 2))));
  return all.map((atom, i) => ({
    ...atom,
    within: [wrap, ...atom.within],
    keep: i < all.length - 1 && (atom.keep || keeps(i)),
  }));
}

function setColumns(columns: readonly Column[], rows: readonly (readonly Rich[])[], width: number): SetColumn[] {
  const needs = columns.map((column, i) =>
    columnNeed(
      column,
      bodyStyle(column),
      rows.map((row) => row[i] ?? ""),
    ),
  );
  const stretch = columns.findIndex((column) => column.stretch === true);
  const shared = shareWidth(needs, width - GAP * (columns.length - 1), stretch < 0 ? null : stretch);
  const widths = fewestLines(shared, needs, linesIn(columns, rows));
  let x = 0;
  return columns.map((column, i) => {
    const own = widths[i] ?? 0;
    const placed = { column, style: bodyStyle(column), x, width: own, axis: needs[i]?.axis ?? 0 };
    x += own + GAP;
    return placed;
  });
}

/** Of each row and the head: how many lines the cell of a column takes at a width. */
function linesIn(columns: readonly Column[], rows: readonly (readonly Rich[])[]) {
  const known = columns.map(() => new Map<number, readonly number[]>());
  return (column: number, width: number): readonly number[] => {
    const of = columns[column] as Column;
    const told = known[column]?.get(width);
    if (told) return told;
    const style = bodyStyle(of);
    const count = (cell: Rich): number =>
      of.align === "length" || of.align === "tick" ? 1 : breakLines(cell, style, width + 0.01).length;
    const all = [breakLines(of.head, TYPE.head, width + 0.01).length, ...rows.map((row) => count(row[column] ?? ""))];
    known[column]?.set(width, all);
    return all;
  };
}

function headRow(set: readonly SetColumn[], right: number): Atom {
  const cells = set.map(({ column, x, width }) => ({
    column,
    x,
    width,
    lines: breakLines(column.head, TYPE.head, width + 0.01),
  }));
  const deep = Math.max(...cells.map((cell) => cell.lines.length));
  const height = onGrid(deep * TYPE.head.leading + PAD);
  return {
    height,
    above: 0,
    keep: true,
    within: [],
    paint: (x, y) => [
      {
        kind: "group",
        role: "row",
        items: cells.map((cell) => ({
          kind: "group",
          role: "header cell",
          items: cell.lines.flatMap((l, i) => {
            const aligned = cell.column.align === "right" || cell.column.align === "length";
            const left = x + cell.x + (aligned ? cell.width - l.width : 0);
            const up = (cell.lines.length - 1 - i) * TYPE.head.leading;
            return paintLine(l, TYPE.head, left, y + height - PAD - TYPE.head.leading + baseline(TYPE.head) - up);
          }),
        })),
      },
      decoration(line(x, y + height, x + right, y + height, { width: 1, ink: BLACK })),
    ],
  };
}

/** A title inside the table; the other cells of the row are empty. */
function headingRow(text: string, columns: number, width: number, first: boolean): Atom {
  const row = (pad: number): Atom => paddedHeading(text, columns, width, first, pad);
  const { height, paint } = row(CLOSE_PAD);
  return { ...row(PAD), closer: { height, paint } };
}

function paddedHeading(text: string, columns: number, width: number, first: boolean, pad: number): Atom {
  const lines = breakLines(text, TYPE.strong, width);
  const space = first ? pad : 3 * pad;
  const cells = Array.from({ length: columns }, (): Item => ({ kind: "group", role: "cell", items: [] }));
  return {
    height: onGrid(space + lines.length * TYPE.strong.leading + pad),
    above: 0,
    keep: true,
    within: [],
    paint: (x, y) => [
      {
        kind: "group",
        role: "row",
        items: [
          {
            kind: "group",
            role: "header cell",
            items: lines.flatMap((l, i) =>
              paintLine(l, TYPE.strong, x, y + space + i * TYPE.strong.leading + baseline(TYPE.strong)),
            ),
          },
          ...cells.slice(1),
        ],
      },
    ],
  };
}

/** One atom, or several where a cell has very many lines. */
function bodyRows(row: readonly Rich[], set: readonly SetColumn[], right: number): Atom[] {
  const cells = set.map((column, i) => {
    const rich = row[i] ?? "";
    return { column, text: plain(rich), lines: breakLines(rich, column.style, column.width + 0.01) };
  });
  const count = (cell: (typeof cells)[number]): number =>
    cell.column.column.align === "length" ? 1 : cell.lines.length;
  const tallest = Math.max(...cells.map(count));
  const rows = Math.ceil(tallest / LONGEST_CELL);
  return Array.from({ length: rows }, (_, i) => {
    const from = i * LONGEST_CELL;
    const slice = cells.map((cell) => ({ ...cell, lines: cell.lines.slice(from, from + LONGEST_CELL) }));
    const { height, paint } = bodyRow(slice, i === 0, right, CLOSE_PAD);
    return { ...bodyRow(slice, i === 0, right, PAD), closer: { height, paint } };
  });
}

interface Slice {
  readonly column: SetColumn;
  readonly text: string;
  readonly lines: readonly Line[];
}

function bodyRow(cells: readonly Slice[], first: boolean, right: number, pad: number): Atom {
  const high = (cell: Slice): number =>
    (cell.column.column.align === "length" ? 1 : cell.lines.length) * cell.column.style.leading;
  const height = onGrid(Math.max(...cells.map(high)) + 2 * pad);
  return {
    height,
    above: 0,
    keep: false,
    within: [],
    paint: (x, y) => [
      {
        kind: "group",
        role: "row",
        items: cells.map((cell) => ({
          kind: "group",
          role: "cell",
          items:
            !first && (cell.column.column.align === "length" || cell.column.column.align === "tick")
              ? []
              : paintCell(cell.column, cell.text, cell.lines, x + cell.column.x, y + pad),
        })),
      },
      decoration(line(x, y + height, x + right, y + height, { width: 0.4, ink: RULE })),
    ],
  };
}
