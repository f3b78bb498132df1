/** The table of contents, in two columns or three, each line a link. */
import type { Item } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { RULE, TYPE } from "../style.ts";
import { baseline } from "../typeset/atom.ts";
import { label } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";

export interface Entry {
  readonly name: string;
  readonly title: string;
  readonly page: number;
}

const ROW = 20;
const GAP = 22;
const style = TYPE.body;
/** So many titles stand in two columns. */
const FEW = 12;

/** A long list is set in three columns, where its titles go in. */
function columnsOf(entries: readonly Entry[], width: number): { readonly count: number; readonly wide: number } {
  const wideOf = (count: number): number => (width - (count - 1) * GAP) / count;
  const longest = Math.max(0, ...entries.map(({ title }) => measure(title, style.font, style.size)));
  const count = entries.length > FEW && longest + 22 <= wideOf(3) ? 3 : 2;
  return { count, wide: wideOf(count) };
}

export const contentsHeight = (entries: readonly Entry[], width: number): number =>
  Math.ceil(entries.length / columnsOf(entries, width).count) * ROW;

export function contentsItems(entries: readonly Entry[], x: number, y: number, width: number): Item[] {
  const { count, wide: column } = columnsOf(entries, width);
  const rows = Math.ceil(entries.length / count);
  if (rows === 0) return [];
  return [
    {
      kind: "group",
      role: "list",
      items: entries.map(({ name, title, page }, i) => {
        const left = x + Math.floor(i / rows) * (column + GAP);
        const top = y + (i % rows) * ROW;
        const base = top + baseline({ ...style, leading: ROW });
        const number = String(page);
        const [from, to] = [
          measure(title, style.font, style.size) + 6,
          column - measure(number, style.font, style.size) - 6,
        ];
        return {
          kind: "group",
          role: "list item",
          items: [
            label(title, style, left, base),
            decoration(
              line(left + from, base - 0.5, left + to, base - 0.5, { width: 0.8, ink: RULE, dash: [0.8, 3.2] }),
            ),
            label(number, style, left + column, base, "right"),
            { kind: "link", x: left, y: top, width: column, height: ROW, to: name },
          ],
        };
      }),
    },
  ];
}
