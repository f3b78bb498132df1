/** Units of columns to try: each prints its name. */
import type { Item } from "../../../src/render/document.ts";
import { type Atom, block } from "../../../src/render/typeset/atom.ts";
import type { Columns } from "../../../src/render/typeset/columns.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import { textsOf } from "../boxes.ts";

export const frame = { x: 60, y: 64, width: 500, height: 400 };
export const GAP = 20;

/** A thing that prints its name at its top. */
export const named = (name: string, height: number, keep = false): Atom =>
  block(
    height,
    (x, y): Item[] => [{ kind: "text", x, y, text: name, font: "regular", size: 10, ink: [0, 0, 0], width: 10 }],
    { keep },
  );
/** A head that keeps with its lines, of 20 points each. */
export const unit = (name: string, head: number, lines: number): Atom[] => [
  named(name, head, true),
  ...Array.from({ length: lines }, (_, i) => named(`${name}${i}`, 20)),
];
/** Fills a column, so that what is before it is not on the last page. */
export const FULL = unit("Z", 400, 0);

/** The names on each page that such columns fill. */
export const pagesOf = (columns: Omit<Columns, "gap" | "between">, between = ""): readonly string[] =>
  flow(
    [{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns: { gap: GAP, between: 20, ...columns } }],
    frame,
  ).map(({ items }) =>
    textsOf(items)
      .map(({ text }) => text)
      .join(between),
  );
