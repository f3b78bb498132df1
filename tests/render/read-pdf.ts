/** Reads a PDF with pdf.js: an implementation that shares nothing with the writer. */
import * as pdfjs from "pdfjs-dist/legacy/build/pdf.mjs";

export interface ReadText {
  readonly text: string;
  readonly x: number;
  /** Baseline from the top of the page. */
  readonly y: number;
  readonly width: number;
}
export interface StructNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly StructNode[];
  readonly type?: string;
}
export interface ReadPage {
  readonly texts: readonly ReadText[];
  readonly structure: StructNode | null;
  /** Operators that paint outside all marked content. */
  readonly unmarked: number;
  readonly links: number;
}

const paints = ["stroke", "fill", "eoFill", "fillStroke", "showText", "constructPath", "paintImageXObject"] as const;

export async function readPdf(bytes: Uint8Array) {
  const task = pdfjs.getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const { height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent({ disableNormalization: true });
    const texts = items.flatMap((item) =>
      "str" in item ? [{ text: item.str, x: item.transform[4], y: height - item.transform[5], width: item.width }] : [],
    );
    const operators = await page.getOperatorList();
    const painting = new Set<number>(paints.map((name) => pdfjs.OPS[name]));
    let [depth, unmarked] = [0, 0];
    for (const op of operators.fnArray) {
      if (op === pdfjs.OPS.beginMarkedContent || op === pdfjs.OPS.beginMarkedContentProps) depth++;
      else if (op === pdfjs.OPS.endMarkedContent) depth--;
      else if (painting.has(op) && depth === 0) unmarked++;
    }
    const annotations = await page.getAnnotations();
    const links = annotations.filter(({ subtype }) => subtype === "Link").length;
    pages.push({ texts, structure: (await page.getStructTree()) as StructNode | null, unmarked, links });
  }
  const outline = await document.getOutline();
  const { info } = await document.getMetadata();
  const labels = await document.getPageLabels();
  const mark = await document.getMarkInfo();
  await task.destroy();
  return { pages, outline, info: info as { readonly Title?: string; readonly CreationDate?: string }, labels, mark };
}
