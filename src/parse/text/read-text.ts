import type { Finding } from "../../findings/finding.ts";
import { failed, type Outcome, outcome } from "../../findings/outcome.ts";
import { controlCharacter } from "../../findings/rules/control-character.ts";
import { emptySource } from "../../findings/rules/empty-source.ts";
import { notUtf8 } from "../../findings/rules/not-utf-8.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { LIMITS } from "../limits.ts";
import { placesOf } from "./lines.ts";

const START = { start: 0, end: 0, line: 1, column: 1 };
/** C0 without tab and line feed, DEL, C1 without NEL, and the signs that turn the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g;

/** Line feeds only, no byte order mark. Every offset in every finding counts in this text. */
export const normaliseText = (text: string): string => text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");

/** Bytes to text: size, UTF-8, byte order mark, line ends, control characters. */
export function readText(bytes: Uint8Array): Outcome<string> {
  if (bytes.length > LIMITS.sourceBytes.limit)
    return failed([tooMuch(START, { count: bytes.length, ...LIMITS.sourceBytes })]);
  const decoded = decode(bytes);
  if (typeof decoded !== "string") return failed([notUtf8(decoded.at, {})]);
  const text = normaliseText(decoded);
  const places = placesOf(text);
  const findings: Finding[] = [];
  for (const found of text.matchAll(CONTROL)) {
    const code = found[0].charCodeAt(0).toString(16).padStart(4, "0").toUpperCase();
    findings.push(controlCharacter(places(found.index, found.index + 1), { code }));
    if (findings.length >= LIMITS.syntaxFindings.limit) break;
  }
  if (findings.length > 0) return failed(findings);
  if (/^(?:\s|#.*|---|\.\.\.)*$/.test(text)) return failed([emptySource(START, {})]);
  return outcome(text);
}

/** The text, or the place of the first bytes that are no UTF-8. */
function decode(bytes: Uint8Array): string | { at: typeof START } {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const text = normaliseText(new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes));
    const at = Math.max(text.indexOf("\ufffd"), 0);
    return { at: placesOf(text)(at, at + 1) };
  }
}
