import { inches, type Length, millimetres } from "./length.ts";
import { multiply } from "./rational.ts";
import { type Measure, type MeasureProblem, scanMeasure } from "./scan-measure.ts";
import { skipBlanks } from "./scan-number.ts";

const FEET = "\\d+\\s*(?:'|′|’|ft|foot|feet)";
const INCH = `\\s*(?:["″”]|''|in|inch|inches|mm|cm)?\\s*`;

/** A hyphen between feet and inches, or between inches and their fraction, where that is the whole text. */
const HYPHENATED = new RegExp(
  `^\\s*(?:${FEET}[\\s-]*)?\\d+-\\d+[/⁄]\\d+${INCH}$|^\\s*${FEET}-\\d+(?:\\s+\\d+[/⁄]\\d+)?${INCH}$`,
  "iu",
);

/** `34-1/2` or `2'-6"` alone: the same with blanks for the hyphens. Undefined where it is not written so. */
export const withoutHyphens = (text: string): string | undefined =>
  HYPHENATED.test(text) ? text.replaceAll("-", " ") : undefined;

/**
 * Reads a text that is one measure and nothing else. `hyphenated` says that a hyphen was read as a blank.
 * "no measure" where the text has no measure or more than one.
 */
export function readMeasure(text: string): { measure: Measure; hyphenated: boolean } | MeasureProblem | "no measure" {
  const plain = withoutHyphens(text);
  const source = plain ?? text;
  const found = scanMeasure(source, skipBlanks(source, 0));
  if (found === undefined) return "no measure";
  if ("problem" in found) return found;
  return skipBlanks(source, found.end) === source.length
    ? { measure: found.measure, hyphenated: plain !== undefined }
    : "no measure";
}

/** Reads a length; a bare number is in the plan's units. Undefined where the text is no length. */
export function readLength(text: string, units: "inch" | "mm"): Length | undefined {
  const found = readMeasure(text);
  if (found === "no measure" || "problem" in found || found.measure.kind === "angle") return undefined;
  const { kind, value } = found.measure;
  return kind === "measure" ? value : multiply(value, units === "inch" ? inches(1) : millimetres(1));
}
