/** Pages that are told where a text sends the reader: they are known only when all pages are filled. */
import type { Item } from "../document.ts";
import { measure } from "../typeset/measure.ts";

/** On which page each anchor stands; `pages` from the second page on. */
export function anchorsOf(pages: readonly (readonly Item[])[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const look = (items: readonly Item[], page: number): void => {
    for (const item of items)
      if (item.kind === "anchor") found.set(item.name, page);
      else if (item.kind === "group") look(item.items, page);
  };
  pages.forEach((items, i) => {
    look(items, i + 2);
  });
  return found;
}

/** The items of page `own` with the pages of what they cite: "The picture of step 3 shows it (page 14)." */
export function cited(items: readonly Item[], own: number, pages: ReadonlyMap<string, number>): readonly Item[] {
  return items.map((item): Item => {
    if (item.kind === "group") return { ...item, items: cited(item.items, own, pages) };
    if (item.kind !== "text" || item.cites === undefined) return item;
    const { cites, ...plain } = item;
    const page = pages.get(cites);
    if (page === undefined || page === own || page === own - 1) return plain;
    const text = plain.text.replace(/\.?$/u, ` (page ${page}).`);
    return { ...plain, text, width: measure(text, plain.font, plain.size) };
  });
}
