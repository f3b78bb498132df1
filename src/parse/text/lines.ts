import type { Span } from "../../findings/span.ts";

/** Turns offsets of a text into spans. Columns count UTF-16 units from 1, as editors do. */
export type Places = (start: number, end: number) => Span;

/** `text` has line feeds only. Offsets outside it are brought to its ends. */
export function placesOf(text: string): Places {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return (from, to) => {
    const start = Math.min(Math.max(from, 0), text.length);
    const end = Math.min(Math.max(to, start), text.length);
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= start) low = middle;
      else high = middle - 1;
    }
    return { start, end, line: low + 1, column: start - (starts[low] ?? 0) + 1 };
  };
}
