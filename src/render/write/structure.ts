/**
 * Writes the items of a page with the structure that a reader who listens needs. All that is painted stands in an element
 * of the structure tree or in an artifact: lines and boxes outside drawings are artifacts, a drawing with its labels is one figure.
 */
import type { Item, Role } from "../document.ts";
import { bounds, type Leaf, leaves } from "../shapes.ts";
import { paintPath, paintText, pt } from "./paint.ts";
import { type Element, type Pdf, pdfText, wellFormed } from "./pdfkit.ts";

export type Group = Extract<Item, { kind: "group" }>;
type Link = Extract<Item, { kind: "link" }>;

const tags: Readonly<Record<Exclude<Role, "decoration">, string>> = {
  "heading 1": "H1",
  "heading 2": "H2",
  paragraph: "P",
  list: "L",
  "list item": "LI",
  figure: "Figure",
  table: "Table",
  row: "TR",
  "header cell": "TH",
  cell: "TD",
};

/** Writes items below an element. Text that stands in no group becomes a paragraph. */
export function writeItems(pdf: Pdf, items: readonly Item[], parent: Element, holdsText: boolean): void {
  const link = items.find((item): item is Link => item.kind === "link");
  const target = link === undefined || !holdsText ? parent : below(pdf, parent, "Link");
  for (const item of items) {
    if (item.kind === "group") writeGroup(pdf, item, target);
    else if (item.kind === "anchor") pdf.addNamedDestination(item.name, "XYZ", null, pt(item.y), null);
    else if (item.kind === "path") artifact(pdf, [item]);
    else if (item.kind === "text") {
      if (holdsText) content(pdf, [item], target, link === undefined ? "Span" : "Link");
      else content(pdf, [item], below(pdf, parent, "P"), "P");
    } else if (item !== link || !holdsText) writeLink(pdf, item, below(pdf, parent, "Link"), item.to);
  }
  if (link !== undefined && target !== parent) writeLink(pdf, link, target, words(items));
}

function writeGroup(pdf: Pdf, group: Group, parent: Element): void {
  const { role, items } = group;
  if (role === "decoration") artifact(pdf, leaves(items));
  else if (role === "figure") figure(pdf, group, parent);
  else {
    const element = below(pdf, parent, tags[role], role === "header cell" ? { scope: "Column" } : {});
    if (role === "list item") writeItems(pdf, items, below(pdf, element, "LBody"), true);
    else writeItems(pdf, items, element, role !== "list" && role !== "table" && role !== "row");
  }
}

function below(pdf: Pdf, parent: Element, tag: string, options = {}): Element {
  const element = pdf.struct(tag, options);
  parent.add(element);
  return element;
}

function figure(pdf: Pdf, group: Group, parent: Element): void {
  const parts = leaves(group.items);
  if (parts.length === 0) return;
  const options = {
    alt: wellFormed(group.alt ?? ""),
    bbox: bounds(parts).map(pt) as [number, number, number, number],
    placement: "Block" as const,
  };
  content(pdf, parts, below(pdf, parent, "Figure", options), "Figure");
  for (const item of group.items) if (item.kind === "anchor") writeItems(pdf, [item], parent, false);
}

function content(pdf: Pdf, parts: readonly Leaf[], element: Element, tag: string): void {
  const marked = pdf.markStructureContent(tag);
  for (const part of parts) paint(pdf, part);
  pdf.endMarkedContent();
  element.add(marked);
}

function artifact(pdf: Pdf, parts: readonly Leaf[]): void {
  if (parts.length === 0) return;
  pdf.markContent("Artifact", { type: "Layout" });
  for (const part of parts) paint(pdf, part);
  pdf.endMarkedContent();
}

const paint = (pdf: Pdf, part: Leaf): void => (part.kind === "path" ? paintPath(pdf, part) : paintText(pdf, part));

/** The text of a link, for readers that show it by itself. */
const words = (items: readonly Item[]): string =>
  leaves(items)
    .flatMap((leaf) => (leaf.kind === "text" ? [leaf.text] : []))
    .join(" ");

function writeLink(pdf: Pdf, { x, y, width, height, to }: Link, element: Element, text: string): void {
  const options = { structParent: element, Contents: pdfText(text) };
  const place = [pt(x), pt(y), pt(width), pt(height)] as const;
  if (/^(https?:\/\/|mailto:)/.test(to)) pdf.link(...place, to, options);
  else pdf.goTo(...place, to, options);
}
