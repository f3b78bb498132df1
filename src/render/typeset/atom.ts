/** The pieces that pages are filled with, from top to bottom: a line, a row, a drawing, a step. */
import type { Item, Role } from "../document.ts";
import { decoration, rectangle } from "../shapes.ts";
import { onGrid, type TextStyle } from "../style.ts";
import { breakLines, paintLine, type Rich } from "./lines.ts";

/** A paragraph, list or table that neighbouring atoms belong to. Equal only to itself. */
export interface Wrap {
  /** Null where it only has a head. */
  readonly role: Role | null;
  /** Set again at the top of each further page. */
  readonly head?: Atom;
}

/** What is never split over pages. */
export interface Atom {
  readonly height: number;
  /** White space above, dropped at the top of a page. */
  readonly above: number;
  /** Stays on one page with the atom that follows. */
  readonly keep: boolean;
  /** Outermost first. */
  readonly within: readonly Wrap[];
  /** Items of the atom with its top left corner at (x, y). */
  readonly paint: (x: number, y: number) => readonly Item[];
  /** The same set lower, or with less above, for a page that it then saves. */
  readonly closer?: Partial<Pick<Atom, "height" | "paint" | "above">>;
}

/** Where the baseline stands in a line: the letters' middle is the line's middle. */
export const baseline = (style: TextStyle): number => style.leading / 2 + style.size * 0.33;

export interface ParagraphOptions {
  readonly role?: Role;
  readonly above?: number;
  /** Stays with what follows, as a heading does. */
  readonly keep?: boolean;
  readonly indent?: number;
  readonly within?: readonly Wrap[];
}

/** One atom a line. The first two lines stay together, and the last two. */
export function paragraph(rich: Rich, style: TextStyle, width: number, options: ParagraphOptions = {}): Atom[] {
  const { role = "paragraph", above = 0, keep = false, indent = 0, within = [] } = options;
  const lines = breakLines(rich, style, width - indent);
  const wrap: Wrap = { role };
  return lines.map((line, i) => ({
    height: style.leading,
    above: i === 0 ? above : 0,
    keep: i === lines.length - 1 ? keep : keep || i === 0 || i === lines.length - 2,
    within: [...within, wrap],
    paint: (x, y) => paintLine(line, style, x + indent, y + baseline(style)),
  }));
}

/** An item of so many lines may stand alone at the foot of a page. */
const ENOUGH = 3;

/** Items below a bullet, or beside a sign of their own that is painted in the indent. The first two stay together where they are short, and the last two. */
export function list(
  items: readonly Rich[],
  style: TextStyle,
  width: number,
  options: { readonly above?: number; readonly between?: number; readonly sign?: Sign } = {},
): Atom[] {
  const { above = 0, between = 4, sign = dot } = options;
  const wrap: Wrap = { role: "list" };
  return items.flatMap((item, i) => {
    const set = (keep: boolean) =>
      paragraph(item, style, width, {
        ...{ role: "list item", indent: 16, within: [wrap], keep },
        above: i === 0 ? above : between,
      });
    const loose = set(false);
    const isStub = i === 0 && loose.length < ENOUGH;
    const lines = i < items.length - 1 && (isStub || i === items.length - 2) ? set(true) : loose;
    const [first, ...rest] = lines;
    if (first === undefined) return [];
    const signed: Atom = { ...first, paint: (x, y) => [sign(x, y, style), ...first.paint(x, y)] };
    return [{ ...signed, closer: { above: Math.floor(first.above / 3) } }, ...rest];
  });
}

export type Sign = (x: number, y: number, style: TextStyle) => Item;

const dot: Sign = (x, y, style) =>
  decoration(rectangle(x + 3, y + style.leading / 2 - 1.8, 3.6, 3.6, { fill: style.ink }));

/** A box to tick, as high as the capitals and a little more. */
export const tickBox: Sign = (x, y, style) => {
  const side = style.size * 0.8;
  const stroke = { width: 0.8, ink: style.ink };
  return decoration(rectangle(x, y + (style.leading - side) / 2, side, side, { stroke }));
};

/** A thing of known height that is painted as a whole. */
export const block = (
  height: number,
  paint: Atom["paint"],
  options: Partial<Pick<Atom, "above" | "keep" | "within">> = {},
): Atom => ({ height: onGrid(height), above: 0, keep: false, within: [], ...options, paint });
