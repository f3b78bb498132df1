import type { Rule } from "../findings/finding.ts";

/** A line of a source, and whether it is of the part that differs from another source. */
export interface ExcerptLine {
  readonly text: string;
  readonly differs: boolean;
}

/** The part of a source that differs from another, with a line before and after it, and "…" for what is left out. */
export function excerpt(source: string, other: string): readonly ExcerptLine[] {
  const [lines, others] = [linesOf(source), linesOf(other)];
  const most = Math.min(lines.length, others.length);
  let head = 0;
  while (head < most && lines[head] === others[head]) head += 1;
  let tail = 0;
  while (tail < most - head && lines.at(-1 - tail) === others.at(-1 - tail)) tail += 1;
  const [from, to] = [Math.max(head - 1, 0), Math.min(lines.length - tail + 1, lines.length)];
  const shown = lines.slice(from, to).map((text, i) => {
    const at = from + i;
    return { text, differs: at >= head && at < lines.length - tail };
  });
  const gap = { text: "…", differs: false };
  return [...(from > 0 ? [gap] : []), ...shown, ...(to < lines.length ? [gap] : [])];
}

const linesOf = (source: string): string[] => source.replace(/\n$/, "").split("\n");

/** What gives a finding and what does not. Where the command line gives it, there is only the command. */
export function examplesOf({ wrong, right, wrongSettings = [], wrongMeasured = [] }: Rule<never>) {
  const options = [...pairs("--set", wrongSettings), ...pairs("--measured", wrongMeasured)];
  if (options.length === 0) return { wrong: excerpt(wrong, right), right: excerpt(right, wrong) };
  const settings = options.join("");
  return { wrong: [{ text: `boardwright check plan.yaml${settings}`, differs: true }], right: [] };
}

const pairs = (flag: string, values: readonly (readonly [string, string])[]): string[] =>
  values.map(([name, value]) => ` ${flag} ${name}=${value.includes(" ") ? `"${value}"` : value}`);
