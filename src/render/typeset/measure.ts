/**
 * How wide a text is, in the faces of assets/fonts, without reading them: advance widths and kerning come from generated tables.
 * The arithmetic is that of the PDF writer: words are kerned with the space that follows them, not with the one before,
 * and digits on either side of a fraction slash (U+2044) are numerators and denominators.
 */
import type { Font } from "../document.ts";
import { byText } from "./by-text.ts";
import { bold } from "./metrics/bold.ts";
import { italic } from "./metrics/italic.ts";
import { regular } from "./metrics/regular.ts";

/** As generated: lists of numbers separated by spaces. After `characters` come ten numerators and ten denominators. */
interface Metrics {
  readonly characters: string;
  /** Thousandths of the type size. */
  readonly advances: string;
  /** Kerning class of each glyph as the first and as the second of a pair. */
  readonly left: string;
  readonly right: string;
  /** Thousandths, row by row: `kern[left * columns + right]`. */
  readonly kern: string;
}

interface Face {
  readonly glyphs: ReadonlyMap<string, number>;
  readonly numerators: number;
  readonly advances: readonly number[];
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly kern: readonly number[];
  readonly columns: number;
}

const numbers = (list: string): number[] => list.split(" ").map(Number);

function face(metrics: Metrics): Face {
  const characters = [...metrics.characters];
  const right = numbers(metrics.right);
  return {
    glyphs: new Map(characters.map((character, index) => [character, index])),
    numerators: characters.length,
    advances: numbers(metrics.advances),
    left: numbers(metrics.left),
    right,
    kern: numbers(metrics.kern),
    columns: Math.max(...right) + 1,
  };
}

const faces = { regular: face(regular), bold: face(bold), italic: face(italic) } satisfies Record<Font, Face>;

const SLASH = "\u2044";
const STAND_IN = "□";
const isDigit = (character: string | undefined): boolean => character !== undefined && /^[0-9]$/.test(character);

/** Between a 1 and the figure after it in a fraction, where the faces leave the room of a wide figure, in thousandths. */
export const FRACTION_KERN = { numerator: -70, denominator: -55 } as const;

function fractionKern(glyph: number, next: number, { numerators }: Face): number {
  const [first, second] = [glyph - numerators, next - numerators];
  if (first === 1 && second >= 0 && second < 10) return FRACTION_KERN.numerator;
  return first === 11 && second >= 10 ? FRACTION_KERN.denominator : 0;
}

/** Indices of the glyphs that set the text. Characters that the faces lack are set as □. */
function glyphs(characters: readonly string[], { glyphs, numerators }: Face): number[] {
  const result = characters.map((character) => glyphs.get(character) ?? glyphs.get(STAND_IN) ?? 0);
  characters.forEach((character, at) => {
    if (character !== SLASH) return;
    for (let i = at - 1; isDigit(characters[i]); i--) result[i] = numerators + Number(characters[i]);
    for (let i = at + 1; isDigit(characters[i]); i++) result[i] = numerators + 10 + Number(characters[i]);
  });
  return result;
}

/** Advance width of one line of text, in points when `size` is in points. */
export const measure = (text: string, font: Font, size: number): number => (widths[font](text) * size) / 1000;

const widths = {
  regular: byText((text) => thousandths(text, faces.regular)),
  bold: byText((text) => thousandths(text, faces.bold)),
  italic: byText((text) => thousandths(text, faces.italic)),
} satisfies Record<Font, (text: string) => number>;

function thousandths(text: string, face: Face): number {
  const { advances, left, right, kern, columns } = face;
  let width = 0;
  for (const word of text.split(/(?<= )/)) {
    const line = glyphs([...word], face);
    line.forEach((glyph, i) => {
      width += advances[glyph] ?? 0;
      const next = line[i + 1];
      if (next === undefined) return;
      width += kern[(left[glyph] ?? 0) * columns + (right[next] ?? 0)] ?? 0;
      width += fractionKern(glyph, next, face);
    });
  }
  return width;
}

/** The characters of a text that the faces cannot print, each once, in order of appearance. */
export function missingCharacters(text: string): string[] {
  const blanks = /[\s\p{Cc}\p{Cf}]/u;
  const missing = [...text.normalize("NFC")].filter((c) => !faces.regular.glyphs.has(c) && !blanks.test(c));
  return [...new Set(missing)];
}

/**
 * Text as it is printed: composed, blanks and controls as plain spaces, no formatting marks, □ for what the faces lack,
 * inch fractions as fractions, apostrophes as such, and a full blank before a unit. Printing it again changes nothing.
 */
export const printable = byText((text: string): string => {
  const composed = text
    .normalize("NFC")
    .replace(/\p{Cf}/gu, "")
    .replace(/(?<=\p{L})'(?=\p{L})/gu, "\u2019");
  const spaced = composed.replace(/[\s\p{Cc}]/gu, (c) => (faces.regular.glyphs.has(c) ? c : " "));
  return inchFractions([...spaced].map((c) => (faces.regular.glyphs.has(c) ? c : STAND_IN)).join(""));
});

/** `1 3/4` with a fraction slash and a narrow blank. Only proper fractions of an inch, in lowest terms: 4/4 lumber and 2024/25 stay. */
const inchFractions = (text: string): string =>
  text
    .replace(/(?<![\p{L}\p{N}/.⁄])([0-9]{1,3})\/(2|4|8|16|32|64|128)(?![\p{N}/⁄]|\.\p{N})/gu, (as, top, bottom) =>
      Number(top) < Number(bottom) && Number(top) % 2 === 1 ? `${top}${SLASH}${bottom}` : as,
    )
    .replace(/(?<![\p{L}\p{N}.⁄])([0-9]{1,3}) (?=[0-9]{1,3}⁄)/gu, "$1\u202f")
    .replace(/\u202f(?=\p{L})/gu, "\u00a0");

/** Heights of the faces as shares of the type size: capitals, small letters, and how far the longest letters reach. */
export const CAP_HEIGHT = 0.66;
export const X_HEIGHT = 0.486;
export const ASCENT = 0.73;
export const DESCENT = 0.21;
