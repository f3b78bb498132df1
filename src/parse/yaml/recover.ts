import type { Document } from "yaml";
import type { Finding } from "../../findings/finding.ts";
import { LIMITS } from "../limits.ts";
import type { Places } from "../text/lines.ts";
import { explainErrors } from "./explain-error.ts";
import { readYaml } from "./read-yaml.ts";

export interface Recovered {
  /** What could be read, without the settings that could not; undefined where that is nothing. */
  readonly document?: Document.Parsed;
  /** Why the others could not be read. */
  readonly findings: readonly Finding[];
  /** Where a second document begins. */
  readonly second?: number;
}

/**
 * Reads YAML. Where that fails it tells why, blanks out the setting of the plan in which it failed first, and reads again,
 * so that the other mistakes are found in the same run, and none that only follow from it. Offsets stay what they were.
 */
export function recover(text: string, places: Places): Recovered {
  const findings: Finding[] = [];
  let left = text;
  for (let attempt = 0; attempt < LIMITS.recoveries.limit; attempt += 1) {
    const read = readYaml(left, places);
    if (read.value === undefined) return { findings: attempt === 0 ? read.findings : findings };
    const [document, next] = read.value;
    if (document === undefined) break;
    const [first, ...others] = explainErrors(document, left, places);
    if (first === undefined) return { document, findings, ...(next?.range && { second: next.range[0] }) };
    let [start, end] = blockAt(left, first.at.start);
    if (left.slice(start, end).trim() === "") [start, end] = blockAt(left, document.errors[0]?.pos[0] ?? 0);
    findings.push(first, ...others.filter(({ at }) => at.start >= start && at.start < end));
    left = left.slice(0, start) + left.slice(start, end).replace(/[^\n]/g, " ") + left.slice(end);
    if (left.length > LIMITS.recoverable.limit) break;
  }
  return { findings };
}

/** From one line that begins at the first column to the next: a setting of the plan and all that belongs to it. */
function blockAt(text: string, offset: number): [start: number, end: number] {
  let [start, end] = [0, text.length];
  for (const { index } of text.matchAll(/^(?!-\s)[^\s#\]},]/gm)) {
    if (index <= offset) start = index;
    else {
      end = index;
      break;
    }
  }
  return [start, end];
}
