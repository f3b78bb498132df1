/** What every page is made from. */
import type { Build } from "../../solve/build.ts";
import { printDrill } from "../../solve/design/boring/drills.ts";
import { placeStep } from "../../solve/design/boring/marks.ts";
import { inches, type Length, millimetres } from "../../units/length.ts";
import { printLength, sayLength } from "../../units/print-length.ts";
import { divide } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";
import type { Item } from "../document.ts";
import type { Pen } from "../drawing/drawing.ts";
import type { Frame } from "../style.ts";
import { TYPE } from "../style.ts";
import { type Atom, type ParagraphOptions, paragraph } from "../typeset/atom.ts";
import { measure } from "../typeset/measure.ts";

export interface Plan {
  readonly build: Build;
  /** The area of a page that may be filled. */
  readonly frame: Frame;
  readonly printer: Printer;
  readonly pen: Pen;
  /** Whose copy it is; empty: nobody's in particular. */
  readonly buyer: string;
  /** It is the copy of the plan's own maker. */
  readonly author: boolean;
}

/** Whose copy is printed. */
export interface CopyOf {
  readonly buyer?: string;
  readonly author?: boolean;
}

/** Prints lengths the way this plan does. */
export interface Printer {
  /** "in" or "mm". */
  readonly unit: string;
  /** To the 128th of an inch or the tenth of a millimetre, without the unit: for sizes of drills, screws and boards, and what is rounded already. */
  readonly exact: (length: Length) => string;
  /** To what a rule has marks for and a stop is set to, without the unit: depths of holes. */
  readonly set: (length: Length) => string;
  /** A drill by its diameter, with the unit where it is not the plan's: "3/8", "35 mm". */
  readonly drill: (diameter: Length) => string;
  /** Rounded to the plan's precision, without the unit. */
  readonly rounded: (length: Length) => string;
  /** Rounded, with the unit. */
  readonly say: (length: Length) => string;
}

export function makePlan(build: Build, frame: Frame, { buyer = "", author = false }: CopyOf = {}): Plan {
  const { units, precision } = build.design;
  const finest = units === "inch" ? inches(1, 128) : millimetres(1, 10);
  const exact = (length: Length): string =>
    printLength(length, { units, precision: finest, style: "typographic" }).text;
  const step = placeStep(build.design);
  const printer: Printer = {
    unit: units === "inch" ? "in" : "mm",
    exact,
    set: (length) => exact(roundTo(length, step)),
    drill: (diameter) => printDrill(diameter, units),
    rounded: (length) => printLength(length, { units, precision, style: "typographic" }).text,
    say: (length) => sayLength(length, { units, precision, style: "typographic" }),
  };
  const pen: Pen = {
    measure,
    print: asSet(printer, step),
    printed: (length) => (isMarked(length, step) ? length : roundTo(length, precision)),
    marked: (length) => roundTo(length, step),
  };
  return { build, frame, printer, pen, buyer, author };
}

/** What can be set on a rule is printed as it is, also where the plan's step is coarser; only what lies between two marks is rounded. */
function asSet({ exact, rounded }: Printer, step: Length): (length: Length) => string {
  return (length) => (isMarked(length, step) ? exact(length) : rounded(length));
}

const isMarked = (length: Length, step: Length): boolean => divide(length, step).d === 1n;

/** The heading of a section, with its place for links and bookmarks. */
export function sectionHeading(name: string, title: string, width: number): Atom[] {
  const lines = paragraph(title, TYPE.section, width, { role: "heading 1", keep: true });
  const [first, ...rest] = lines;
  if (first === undefined) return [];
  const anchor = (y: number): Item => ({ kind: "anchor", name, y: Math.max(0, y - 8), bookmark: { title, level: 1 } });
  return [{ ...first, paint: (x, y) => [anchor(y), ...first.paint(x, y)] }, ...rest];
}

export const subheading = (title: string, width: number, above = 20): Atom[] =>
  paragraph(title, TYPE.heading, width, { role: "heading 2", keep: true, above });

export const body = (text: Parameters<typeof paragraph>[0], width: number, options: ParagraphOptions = {}): Atom[] =>
  paragraph(text, TYPE.body, width, { above: 4, ...options });

/** The text with a capital first. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
