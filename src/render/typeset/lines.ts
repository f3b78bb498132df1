/** Breaks text into lines. */
import type { Font, Item } from "../document.ts";
import type { TextStyle } from "../style.ts";
import { measure, printable } from "./measure.ts";

/** A stretch of text in one face. */
export interface Run {
  readonly text: string;
  readonly font: Font;
}
/** Plain text in the face of its style, or text in several faces. */
export type Rich = string | readonly Run[];

export interface Line {
  readonly runs: readonly (Run & { readonly x: number; readonly width: number })[];
  readonly width: number;
}

/** Words are broken after so many letters, whatever the width. */
const LONGEST_WORD = 200;

/** Breaks at blanks, and inside a word only where it is wider than the line. Always at least one line. */
export function breakLines(rich: Rich, style: TextStyle, width: number): Line[] {
  const runs = typeof rich === "string" ? [{ text: rich, font: style.font }] : rich;
  const words = glue(runs.flatMap((run) => split(run, style.size, width)));
  const lines = fill(words, width);
  return withoutStub(words, lines, width).map((line) => setLine(line, style.size));
}

const widthOf = (words: readonly Word[]): number =>
  words.reduce((sum, word, i) => sum + (i === words.length - 1 ? word.width : word.full), 0);

/** How wide is the widest of what is never parted: a word, a number with its unit. */
export function widestPiece(text: string, style: TextStyle): number {
  const words = split({ text, font: style.font }, style.size, Number.POSITIVE_INFINITY);
  return Math.max(0, ...glue(words).map(widthOf));
}

/** As many groups on each line as go there. */
function fill(words: readonly (readonly Word[])[], width: number): Word[][] {
  const lines: Word[][] = [[]];
  let used = 0;
  for (const group of words) {
    const total = widthOf(group);
    if (used > 0 && used + total > width + 1e-6) {
      lines.push([]);
      used = 0;
    }
    for (const word of group) {
      const line = lines[lines.length - 1] ?? [];
      if (used > 0 && used + word.width > width + 1e-6) {
        lines.push([word]);
        used = word.full;
      } else {
        line.push(word);
        used += word.full;
      }
    }
  }
  return lines;
}

/** A last line that is narrower than this share of the width takes a word more, where the one before it stays wider than that other share. */
const STUB = 0.16;
const LEFT = 0.6;

function withoutStub(groups: readonly (readonly Word[])[], lines: Word[][], width: number): Word[][] {
  const [before, last] = [lines.at(-2), lines.at(-1)];
  const end = groups.at(-1) ?? [];
  const more = groups.at(-2) ?? [];
  if (!before || !last || last.length !== end.length || widthOf(last) >= STUB * width) return lines;
  const shorter = before.slice(0, before.length - more.length);
  const longer = [...more, ...last];
  if (shorter.length === 0 || widthOf(shorter) < LEFT * width || widthOf(longer) > width) return lines;
  return [...lines.slice(0, -2), shorter, longer];
}

/** `width` without, `full` with the blank that follows. */
interface Word extends Run {
  readonly width: number;
  readonly full: number;
  /** Nothing may break before the next word. */
  readonly tied: boolean;
}

function split(run: Run, size: number, width: number): Word[] {
  const pieces = printable(run.text).split(/(?<= )(?! )|(?<=[\p{L}]-)(?=\p{L})/u);
  return pieces.flatMap((piece) => {
    const blank = piece.endsWith(" ");
    const parts = chop(piece.trimEnd(), run.font, size, width);
    return parts.map((text, i) => {
      const last = i === parts.length - 1;
      const full = last && blank ? `${text} ` : text;
      return {
        text: full,
        font: run.font,
        width: measure(text, run.font, size),
        full: measure(full, run.font, size),
        tied: last && !/[ -]$/.test(full),
      };
    });
  });
}

/** A word in pieces that fit the line. */
function chop(word: string, font: Font, size: number, width: number): string[] {
  if (word.length <= LONGEST_WORD && measure(word, font, size) <= width) return [word];
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    const longer = piece + letter;
    if (piece !== "" && (longer.length > LONGEST_WORD || measure(longer, font, size) > width)) {
      pieces.push(piece);
      piece = letter;
    } else piece = longer;
  }
  return [...pieces, piece];
}

/** Words that must stay on one line are put together: a number and its unit, a name and its mark. */
function glue(words: readonly Word[]): Word[][] {
  const groups: Word[][] = [];
  words.forEach((word, i) => {
    const before = words[i - 1];
    const group = groups[groups.length - 1];
    if (before !== undefined && group !== undefined && (before.tied || bound(before.text.trim(), word.text.trim())))
      group.push(word);
    else groups.push([word]);
  });
  return groups;
}

const units = /^(in|mm|cm|m|ft|lb|kg|g|ml|l|oz|pt|qt|gal|sq|min|hours?|h|°|%|×)(\W|$)/;
const mark = /^\(?[A-Z]{1,2}[0-9]?\)?[.,;:]*$/;

function bound(left: string, right: string): boolean {
  if (/[0-9″′"']$/.test(left) && (units.test(right) || /^[0-9]+⁄/.test(right))) return true;
  if (left.endsWith("×") || right === "×") return true;
  if (/^(step|page|part|parts|No\.|#)$/i.test(left) && /^[0-9A-Z]/.test(right)) return true;
  // A list of marks breaks after any of its commas.
  return (mark.test(right) && !/[.!?:;,]$/.test(left)) || /^[–—→]/.test(right);
}

function setLine(words: readonly Word[], size: number): Line {
  const merged: Run[] = [];
  words.forEach((word, i) => {
    const text = i === words.length - 1 ? word.text.trimEnd() : word.text;
    const last = merged[merged.length - 1];
    if (last?.font === word.font) merged[merged.length - 1] = { text: last.text + text, font: word.font };
    else merged.push({ text, font: word.font });
  });
  let x = 0;
  const runs = merged
    .filter((run) => run.text !== "")
    .map((run) => {
      const width = measure(run.text, run.font, size);
      const placed = { ...run, x, width };
      x += width;
      return placed;
    });
  return { runs, width: x };
}

/** The items of a line that begins at x and stands on the baseline y. */
export const paintLine = (line: Line, style: TextStyle, x: number, y: number): Item[] =>
  line.runs.map((run) => ({
    kind: "text",
    x: x + run.x,
    y,
    text: run.text,
    font: run.font,
    size: style.size,
    ink: style.ink,
    width: run.width,
  }));

/** One line of text, not broken: for labels, heads and numbers. */
export function label(
  text: string,
  style: TextStyle,
  x: number,
  y: number,
  align: "left" | "centre" | "right" = "left",
): Item {
  const shown = printable(text);
  const width = measure(shown, style.font, style.size);
  const left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  return { kind: "text", x: left, y, text: shown, font: style.font, size: style.size, ink: style.ink, width };
}

/** Text cut with an ellipsis so that it fits the width. */
export function fit(text: string, style: TextStyle, width: number): string {
  const shown = printable(text);
  if (measure(shown, style.font, style.size) <= width) return shown;
  const letters = [...shown].slice(0, LONGEST_WORD);
  while (letters.length > 0 && measure(`${letters.join("").trimEnd()}…`, style.font, style.size) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}
