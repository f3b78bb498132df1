/**
 * Writes the items of a page with the structure that a reader who listens needs. All that is painted stands in an element
 * of the structure tree or in an artifact: lines and boxes outside drawings are artifacts, a drawing with its labels is one figure.
 */
import type { Item, Role } from "../document.ts";
import { paintPath, paintText, pt } from "./paint.ts";
import { type Element, type Pdf, pdfText } from "./pdfkit.ts";

export type Group = Extract<Item, { kind: "group" }>;
type Link = Extract<Item, { kind: "link" }>;
type Leaf = Extract<Item, { kind: "path" | "text" }>;

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
    } else if (item !== link || !holdsText) writeLink(pdf, item, below(pdf, parent, "Link"));
  }
  if (link !== undefined && target !== parent) writeLink(pdf, link, target);
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
  const options = { alt: group.alt ?? "", bbox: bounds(parts), placement: "Block" as const };
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

function writeLink(pdf: Pdf, { x, y, width, height, to }: Link, element: Element): void {
  const options = { structParent: element, Contents: pdfText(to) };
  const place = [pt(x), pt(y), pt(width), pt(height)] as const;
  if (/^(https?:\/\/|mailto:)/.test(to)) pdf.link(...place, to, options);
  else pdf.goTo(...place, to, options);
}

/** Everything that is painted, whatever group it stands in. */
export function leaves(items: readonly Item[]): Leaf[] {
  return items.flatMap((item) => {
    if (item.kind === "group") return leaves(item.items);
    return item.kind === "path" || item.kind === "text" ? [item] : [];
  });
}

/** Left, top, right and bottom of what is painted, without the width of lines. */
export function bounds(parts: readonly Leaf[]): [number, number, number, number] {
  const xs: number[] = [];
  const ys: number[] = [];
  const reach = (x: number, y: number): void => {
    xs.push(x);
    ys.push(y);
  };
  for (const part of parts) {
    if (part.kind === "text") {
      reach(part.x, part.y - part.size);
      reach(part.x + part.width, part.y);
    } else for (const step of part.steps) if (step.to !== "close") reach(step.x, step.y);
  }
  const low = (list: readonly number[]): number => pt(list.reduce((a, b) => Math.min(a, b), Infinity));
  const high = (list: readonly number[]): number => pt(list.reduce((a, b) => Math.max(a, b), -Infinity));
  return [low(xs), low(ys), high(xs), high(ys)];
}
