import type { Finding } from "../finding.ts";
import type { Span } from "../span.ts";
import { escapeText, escapeWords } from "./escape.ts";
import type { Palette } from "./palette.ts";
import { columns } from "./width.ts";

/** A source as the printing needs it: its name, and its text split into lines. */
export interface PrintedSource {
  readonly name: string;
  readonly lines: readonly string[];
  /** Other files in which something may be found, by name. */
  readonly others?: ReadonlyMap<string, readonly string[]>;
}

interface Mark {
  readonly at: Span;
  readonly label: string;
  readonly main: boolean;
}

/** The lines of the source that a finding points at, with pointers and labels below them. */
export function frame(finding: Finding, plan: PrintedSource, palette: Palette, width: number): string[] {
  const { line, column, file } = finding.at;
  const source = file === undefined ? plan : { name: file, lines: plan.others?.get(file) ?? [] };
  const main: Mark = { at: finding.at, label: finding.label, main: true };
  const near = finding.also.filter(({ at }) => at.file === file);
  const marks = [main, ...near.map((other): Mark => ({ ...other, main: false }))];
  marks.sort((a, b) => a.at.line - b.at.line || Number(a.main) - Number(b.main) || a.at.start - b.at.start);
  const digits = String(Math.max(...marks.map((mark) => mark.at.line))).length;
  const gutter = " ".repeat(digits);
  const place = palette.file(`${escapeText(source.name)}:${line}:${column}`);
  const body = marks.flatMap((mark, index) => {
    const before = marks[index - 1]?.at.line;
    const number = String(mark.at.line).padStart(digits);
    const cut = cutLine(source.lines[mark.at.line - 1] ?? "", mark.at, width - digits - 3);
    const gap = before !== undefined && mark.at.line > before + 1 ? [`${gutter}·`] : [];
    const shown = mark.at.line === before ? [] : [`${number}│ ${cut.text}`.trimEnd()];
    const below = pointer(mark, cut, width - digits - 3);
    return [...gap, ...shown, ...below.map((each) => `${gutter}│ ${colour(each, mark, finding, palette)}`)];
  });
  return [`${gutter}┌─ ${place}`, `${gutter}│`, ...body];
}

const colour = (text: string, mark: Mark, finding: Finding, palette: Palette): string =>
  mark.main ? palette.pointer(text, finding.severity) : text;

interface Cut {
  readonly text: string;
  /** Where the marked text begins in it, and how wide it is. */
  readonly from: number;
  readonly wide: number;
}

/** Control characters shown, tabs as two blanks, and no more of a long line than fits, the mark in it. */
function cutLine(line: string, at: Span, width: number): Cut {
  const show = (text: string): string => escapeText(text).replaceAll("\t", "  ");
  const start = Math.min(at.column - 1, line.length);
  const [before, marked, after] = [
    show(line.slice(0, start)),
    show(line.slice(start, start + Math.max(at.end - at.start, 1))),
    show(line.slice(start + Math.max(at.end - at.start, 1))),
  ];
  const all = before + marked + after;
  if (columns(all) <= width) return { text: all, from: columns(before), wide: Math.max(columns(marked), 1) };
  const seen = [...marked].slice(0, Math.max(width - 12, 8)).join("");
  const room = Math.max(width - columns(seen) - 2, 0);
  const lead = takeEnd(before, Math.min(columns(before), Math.max(Math.floor(room / 2), room - columns(after))));
  const cutLead = lead === before ? lead : `…${lead}`;
  const tail = takeStart(seen === marked ? after : marked.slice(seen.length) + after, room - columns(lead));
  const complete = columns(cutLead + seen + tail) >= columns(all);
  return {
    text: `${cutLead}${seen}${tail}${complete ? "" : "…"}`,
    from: columns(cutLead),
    wide: Math.max(columns(seen), 1),
  };
}

function takeStart(text: string, width: number): string {
  let taken = "";
  for (const sign of text) {
    if (columns(taken + sign) > width) break;
    taken += sign;
  }
  return taken;
}

const takeEnd = (text: string, width: number): string => {
  const signs = [...text];
  while (signs.length > 0 && columns(signs.join("")) > width) signs.shift();
  return signs.join("");
};

/** The line of `^` or `-` with the label behind it, or below it where there is no room. */
function pointer({ label, main }: Mark, { from, wide }: Cut, width: number): string[] {
  const line = `${" ".repeat(from)}${(main ? "^" : "-").repeat(wide)}`;
  if (label === "") return [line];
  const text = escapeWords(label);
  if (columns(line) + 1 + columns(text) <= width) return [`${line} ${text}`];
  return [line, `${" ".repeat(Math.max(Math.min(from, width - columns(text)), 0))}${text}`];
}
