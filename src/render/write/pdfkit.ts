/**
 * All that we use of pdfkit, behind one type. Its own types lack or mistype what we need, and some of its habits are mended here:
 * information is escaped in the XMP packet, and characters that only matter to the eye are searched and copied as plain ones.
 */
import PDFDocument from "pdfkit";
import { type Measuring, mendFace, mendMeasuring } from "./face.ts";

/** An element of the structure tree. */
export interface Element {
  add(child: Element | Content): Element;
  end(): void;
}
/** Painted content that belongs to an element. */
export interface Content {
  readonly refs: readonly unknown[];
}

export interface Outline {
  addItem(title: string, options: { left: number; top: number; expanded?: boolean }): Outline;
  options: { expanded: boolean };
}

export interface Pdf {
  addPage(): void;
  end(): void;
  on(event: "data", listener: (bytes: Uint8Array) => void): void;
  on(event: "end", listener: () => void): void;
  on(event: "error", listener: (error: unknown) => void): void;

  save(): void;
  restore(): void;
  transform(a: number, b: number, c: number, d: number, e: number, f: number): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  closePath(): void;
  lineWidth(width: number): void;
  lineCap(cap: "butt" | "round"): void;
  lineJoin(join: "miter" | "round"): void;
  dash(lengths: readonly number[]): void;
  undash(): void;
  fillColor(rgb: readonly number[]): void;
  strokeColor(rgb: readonly number[]): void;
  fill(): void;
  stroke(): void;
  fillAndStroke(): void;

  font(name: string, size: number): void;
  registerFont(name: string, bytes: Uint8Array): void;
  text(text: string, x: number, y: number, options: { lineBreak: false; baseline: "alphabetic" }): void;

  struct(type: string, options?: StructOptions): Element;
  addStructure(element: Element): void;
  markStructureContent(tag: string): Content;
  markContent(tag: "Artifact", options: { type: string }): void;
  endMarkedContent(): void;

  addNamedDestination(name: string, fit: "XYZ", x: number | null, y: number, zoom: null): void;
  goTo(x: number, y: number, width: number, height: number, name: string, options: LinkOptions): void;
  link(x: number, y: number, width: number, height: number, address: string, options: LinkOptions): void;
  readonly outline: Outline;
}

export interface StructOptions {
  readonly alt?: string;
  readonly scope?: "Column";
  readonly bbox?: readonly [number, number, number, number];
  readonly placement?: "Block";
}
export interface LinkOptions {
  readonly structParent: Element;
  readonly Contents: unknown;
}

interface Inside {
  info: Readonly<Record<string, unknown>>;
  _addInfo(): void;
  _root: { data: { PageLabels?: unknown } };
  _font: Measuring;
}

export interface PdfOptions {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly producer: string;
  readonly language: string;
  /** ISO date; midnight, universal time. */
  readonly date: string;
  readonly size: readonly [number, number];
  readonly fonts: ReadonlyMap<string, Uint8Array>;
}

export function openPdf(options: PdfOptions): Pdf {
  const { title, author, subject, producer, language, date, size, fonts } = options;
  const texts = { Title: title, Author: author, Subject: subject, Creator: producer, Producer: producer };
  const pdf = new PDFDocument({
    size: [...size],
    margin: 0,
    autoFirstPage: false,
    font: null,
    pdfVersion: "1.7",
    subset: "PDF/UA",
    tagged: true,
    lang: language,
    displayTitle: true,
    info: {
      ...Object.fromEntries(
        Object.entries(texts).flatMap(([key, text]) => (text === "" ? [] : [[key, wellFormed(text)]])),
      ),
      CreationDate: day(date),
    },
  } as unknown as PDFKit.PDFDocumentOptions) as unknown as Pdf & Inside;
  mendInformation(pdf);
  for (const [name, bytes] of fonts) {
    pdf.registerFont(name, bytes);
    pdf.font(name, 10);
    mendFace(pdf._font.font);
    mendMeasuring(pdf._font);
  }
  pdf.outline.options = { expanded: true };
  pdf._root.data.PageLabels = { Nums: [0, { S: "D", St: 1 }] };
  return pdf;
}

/** Halves of characters cannot be written in any encoding. */
export const wellFormed = (text: string): string => text.replace(/\p{Surrogate}/gu, "\uFFFD");

/** Text of an annotation or dictionary; pdfkit writes plain strings as names. */
export const pdfText = (text: string): unknown => new String(wellFormed(text));

/** What pdfkit asks of a date, at midnight of universal time. */
function day(date: string) {
  if (!/^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(date)) throw new Error(`not a date: ${date}`);
  return {
    getTime: () => date,
    valueOf: () => date,
    toISOString: () => `${date}T00:00:00.000Z`,
    toString: () => `D:${date.replaceAll("-", "")}000000Z`,
  };
}

/** pdfkit writes the information into XML as it is, and would write our date as a dictionary. */
function mendInformation(pdf: Inside): void {
  const write = pdf._addInfo.bind(pdf);
  const given = pdf.info;
  const each = (change: (value: unknown) => unknown): Readonly<Record<string, unknown>> =>
    Object.fromEntries(Object.entries(given).map(([key, value]) => [key, change(value)]));
  pdf.info = each(String);
  pdf._addInfo = () => {
    const plain = pdf.info;
    pdf.info = each((value) => (typeof value === "string" ? xml(value) : value));
    write();
    pdf.info = plain;
  };
}

const xml = (text: string): string =>
  text
    .replace(/[\uFFFE\uFFFF]/g, "\uFFFD")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0 forbids them
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;");
