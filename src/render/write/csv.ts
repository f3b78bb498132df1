/** The tables of the pages as CSV after RFC 4180: comma between cells, quotes where needed, lines ended by CR LF. */
import type { Document } from "../document.ts";
import { fileName, groupsOf, wordsOf } from "./gather.ts";

export interface NamedTable {
  readonly name: string;
  readonly text: string;
}

/** One for each heading and shape of table; a table that runs over several pages is one, its head once. */
export function tablesOf(document: Document): readonly NamedTable[] {
  const tables = new Map<string, { readonly kind: string; readonly head: string; readonly lines: string[] }>();
  let kind = "";
  for (const { items } of document.pages)
    for (const table of groupsOf(items, "heading 1", "heading 2", "table")) {
      if (table.role !== "table") {
        kind = wordsOf(table);
        continue;
      }
      const [head = "", ...lines] = groupsOf(table.items, "row").map((row) =>
        row.items.flatMap((cell) => (cell.kind === "group" ? [quoted(wordsOf(cell))] : [])).join(","),
      );
      const key = `${kind}\n${head}`;
      const before = tables.get(key);
      if (before) before.lines.push(...lines.filter((line) => line !== head));
      else tables.set(key, { kind, head, lines });
    }
  const counts = new Map<string, number>();
  return [...tables.values()].map(({ kind, head, lines }) => {
    const stem = fileName(kind);
    const number = (counts.get(stem) ?? 0) + 1;
    counts.set(stem, number);
    const name = number === 1 ? stem : `${stem}-${number}`;
    return { name, text: `${[head, ...lines].join("\r\n")}\r\n` };
  });
}

/** A cell that a spreadsheet would take for a formula is kept as text by a blank before it. */
function quoted(text: string): string {
  const safe = /^[=+\-@\t]/.test(text) ? ` ${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
