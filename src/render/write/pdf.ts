/** Writes a Document as PDF: tagged, searchable, and the same bytes for the same document. */
import type { Document, Font, Item } from "../document.ts";
import { type Outline, openPdf, type Pdf, wellFormed } from "./pdfkit.ts";
import { writeItems } from "./structure.ts";

/**
 * @param fonts the files in assets/fonts
 * @throws Error where the document itself is at fault: a coordinate that is not finite, a link that leads nowhere
 */
export async function writePdf(document: Document, fonts: Readonly<Record<Font, Uint8Array>>): Promise<Uint8Array> {
  checkLinks(document);
  const { paper, ...about } = document;
  const files = new Map([...Object.entries(fonts)].sort(([a], [b]) => (a < b ? -1 : 1)));
  const pdf = openPdf({ ...about, size: [paper.width, paper.height], fonts: files });
  const bytes = collect(pdf);
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  let above: Outline = pdf.outline;
  for (const page of document.pages) {
    pdf.addPage();
    pdf.lineJoin("round");
    writeItems(pdf, page.items, root, false);
    for (const { bookmark, y } of anchors(page.items)) {
      if (bookmark === undefined) continue;
      const entry = { left: paper.width, top: y, expanded: false };
      if (bookmark.level === 1) above = pdf.outline.addItem(wellFormed(bookmark.title), entry);
      else above.addItem(wellFormed(bookmark.title), entry);
    }
  }
  root.end();
  pdf.end();
  return bytes;
}

function collect(pdf: Pdf): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    pdf.on("data", (chunk) => chunks.push(chunk));
    pdf.on("error", reject);
    pdf.on("end", () => {
      const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      resolve(whole);
    });
  });
}

type Anchor = Extract<Item, { kind: "anchor" }>;
type Link = Extract<Item, { kind: "link" }>;

const flat = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item) => (item.kind === "group" ? flat(item.items) : [item]));
const anchors = (items: readonly Item[]): Anchor[] => flat(items).filter((i): i is Anchor => i.kind === "anchor");

function checkLinks(document: Document): void {
  const all = document.pages.flatMap((page) => flat(page.items));
  const names = new Set(anchors(all).map((anchor) => anchor.name));
  const links = all.filter((item): item is Link => item.kind === "link");
  const lost = links.find(({ to }) => !names.has(to) && !/^(https?:\/\/|mailto:)/.test(to));
  if (lost !== undefined) throw new Error(`a link leads to "${lost.to}", which is nowhere`);
}
