import { inches, type Length } from "./length.ts";
import { add, multiply, type Rational } from "./rational.ts";
import { type ScannedNumber, scanNumber, skipBlanks } from "./scan-number.ts";
import { UNIT_WORDS, type Unit } from "./unit-words.ts";

/** A bare number, a length, or an angle, as written. */
export type Measure =
  | { readonly kind: "number"; readonly value: Rational; readonly form: ScannedNumber["form"] }
  | { readonly kind: "measure"; readonly value: Length; readonly form: ScannedNumber["form"] }
  | { readonly kind: "angle"; readonly degrees: Rational; readonly form: ScannedNumber["form"] };

/** What stops a measure from being read, and where in the text. */
export interface MeasureProblem {
  readonly problem: "unknown unit" | "divided by zero" | "two numbers";
  readonly start: number;
  readonly end: number;
}

const WORD = /''|["″”'′’°]|[\p{L}]+(?![-\p{L}\p{N}_])/uy;
const OTHER_WORD = /[\p{L}_][-\p{L}\p{N}_.]*/uy;

const scanUnit = (text: string, from: number): { unit: Unit; end: number } | undefined => {
  WORD.lastIndex = from;
  const word = WORD.exec(text)?.[0];
  const unit = word === undefined ? undefined : UNIT_WORDS.get(word.toLowerCase());
  return word === undefined || unit === undefined ? undefined : { unit, end: from + word.length };
};

/** `2' 6"`, `2 ft 6 in`, `2' 6`: the inches after the feet, if any follow. */
function scanInches(text: string, from: number): { value: Length; end: number } | MeasureProblem | undefined {
  const start = skipBlanks(text, from);
  const number = scanNumber(text, start);
  if (number === undefined) return undefined;
  if (number === "zero") return { problem: "divided by zero", start, end: text.length };
  const unit = scanUnit(text, skipBlanks(text, number.end));
  if (unit !== undefined && unit.unit.kind !== "inch") return { problem: "two numbers", start, end: unit.end };
  return { value: multiply(number.value, inches(1)), end: unit?.end ?? number.end };
}

/**
 * Reads the measure that begins at `from`, as far as it goes. Undefined where none begins there.
 * A word behind the number that is no unit is a problem, since no measure can be followed by a name.
 */
export function scanMeasure(
  text: string,
  from: number,
): { measure: Measure; end: number } | MeasureProblem | undefined {
  const number = scanNumber(text, from);
  if (number === undefined) return undefined;
  if (number === "zero") return { problem: "divided by zero", start: from, end: text.length };
  const { value, form } = number;
  const next = skipBlanks(text, number.end);
  const found = scanUnit(text, next);
  if (found === undefined) {
    OTHER_WORD.lastIndex = next;
    const word = OTHER_WORD.exec(text)?.[0];
    if (word !== undefined) return { problem: "unknown unit", start: next, end: next + word.length };
    if (scanNumber(text, next) !== undefined) return { problem: "two numbers", start: next, end: text.length };
    return { measure: { kind: "number", value, form }, end: number.end };
  }
  const { unit, end } = found;
  if (unit.kind === "degree") return { measure: { kind: "angle", degrees: value, form }, end };
  const length = multiply(value, unit.one);
  if (unit.kind !== "foot") return { measure: { kind: "measure", value: length, form }, end };
  const more = scanInches(text, end);
  if (more === undefined) return { measure: { kind: "measure", value: length, form }, end };
  if ("problem" in more) return more;
  return { measure: { kind: "measure", value: add(length, more.value), form }, end: more.end };
}
