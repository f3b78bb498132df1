/** What stands in the groups of a page: figures, tables and words, each for a writer of its own. */
import type { Document, Item, Role } from "../document.ts";
import { leaves } from "../shapes.ts";
import type { Figure } from "./svg.ts";

type Group = Extract<Item, { kind: "group" }>;

/** Groups of some roles, outermost first, in the order of the page. */
export const groupsOf = (items: readonly Item[], ...roles: readonly Role[]): readonly Group[] =>
  items.flatMap((item) =>
    item.kind !== "group" ? [] : roles.includes(item.role) ? [item] : groupsOf(item.items, ...roles),
  );

/** The words of a group, its lines put together as they are read. */
export const wordsOf = (group: Group): string =>
  leaves(group.items)
    .flatMap((leaf) => (leaf.kind === "text" ? [leaf.text] : []))
    .join(" ")
    .replace(/\s+/g, " ")
    .trim();

export interface NamedFigure {
  /** "exploded-1", "step-4": for the name of a file. */
  readonly name: string;
  readonly figure: Figure;
}

/** Every drawing of the document, named after what it shows or the kind of its page. */
export function figuresOf(document: Document): readonly NamedFigure[] {
  const counts = new Map<string, number>();
  return document.pages.flatMap(({ kind, of, items }) => {
    // A step without a picture has an empty figure.
    const figures = groupsOf(items, "figure").filter((figure) => leaves(figure.items).length > 0);
    return figures.map((figure, i) => {
      const about = figure.about ?? (of.length === figures.length ? (of[i] as string) : kind);
      const stem = fileName(about);
      const number = (counts.get(stem) ?? 0) + 1;
      counts.set(stem, number);
      return { name: number === 1 ? stem : `${stem}-${number}`, figure };
    });
  });
}

export const fileName = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "") || "drawing";
