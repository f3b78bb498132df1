import { type Finding, whenOf } from "../finding.ts";
import { escapeWords } from "./escape.ts";
import { frame, type PrintedSource } from "./frame.ts";
import { inOrder } from "./order.ts";
import { type Palette, PLAIN } from "./palette.ts";
import { wrap } from "./width.ts";

export interface TerminalOptions {
  /** Columns; 80 if nothing is said. */
  readonly width?: number;
  readonly palette?: Palette;
  /** How many findings are printed in full; 20 if nothing is said. The others are counted by rule. */
  readonly most?: number;
}

/** A source for printing. `text` is as it was read, whatever its line ends. */
export const printedSource = (name: string, text: string): PrintedSource => ({
  name,
  lines: text.replace(/^\ufeff/, "").split(/\r\n|\r|\n/),
});

/** Findings as text for people: what, where, why and what to do, each with the lines it is about. Ends with a line feed. */
export function printTerminal(
  findings: readonly Finding[],
  source: PrintedSource,
  options: TerminalOptions = {},
): string {
  const { width = 80, palette = PLAIN, most = 20 } = options;
  const sorted = inOrder(findings);
  const blocks = sorted.slice(0, most).map((finding) => block(finding, source, palette, Math.max(width, 40)));
  const rest = restOf(sorted.slice(most));
  return [...blocks, ...(rest === "" ? [] : [`${rest}\n`])].join("\n");
}

function block(finding: Finding, source: PrintedSource, palette: Palette, width: number): string {
  const level = `${finding.severity}:`;
  const [first = "", ...more] = wrap(`${level} ${escapeWords(finding.message)}`, width, "  ");
  const head = [`${palette.level(level, finding.severity)}${first.slice(level.length)}`, ...more];
  const when = whenOf(finding);
  const only = when === undefined ? [] : indented(`only ${when}.`, width);
  const why = finding.why === undefined ? [] : indented(sentence(finding.why), width);
  const help = finding.help === undefined ? [] : indented(`help: ${sentence(finding.help)}`, width);
  const tail = indented(`more: boardwright explain ${finding.rule}`, width);
  return [...head, ...frame(finding, source, palette, width), "", ...only, ...why, ...help, ...tail, ""].join("\n");
}

const indented = (text: string, width: number): string[] =>
  wrap(escapeWords(text), width - 2, "  ").map((line) => `  ${line}`);

/** With a full stop, unless there is an end already. */
const sentence = (text: string): string => (/[\p{L}\p{N}`)\]"']$/u.test(text) ? `${text}.` : text);

function restOf(findings: readonly Finding[]): string {
  if (findings.length === 0) return "";
  const counts = new Map<string, number>();
  for (const { rule } of findings) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  const listed = [...counts].map(([rule, count]) => `${count} ${rule}`).join(", ");
  return wrap(`and ${findings.length} more: ${listed}`, 80, "  ").join("\n");
}
