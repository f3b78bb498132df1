import type { Finding } from "../../findings/finding.ts";
import { failed, type Outcome, outcome } from "../../findings/outcome.ts";
import { decimalComma } from "../../findings/rules/decimal-comma.ts";
import { divisionByZero } from "../../findings/rules/division-by-zero.ts";
import { fractionAfterDivision } from "../../findings/rules/fraction-after-division.ts";
import { hyphenInFormula } from "../../findings/rules/hyphen-in-formula.ts";
import { hyphenReadAsMeasure } from "../../findings/rules/hyphen-read-as-measure.ts";
import { measureNotRead } from "../../findings/rules/measure-not-read.ts";
import { measureTooLarge } from "../../findings/rules/measure-too-large.ts";
import { textTooLong } from "../../findings/rules/text-too-long.ts";
import { unknownFunction } from "../../findings/rules/unknown-function.ts";
import { unknownUnit } from "../../findings/rules/unknown-unit.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import { withoutHyphens } from "../../units/read-measure.ts";
import { UNIT_WORDS } from "../../units/unit-words.ts";
import type { Formula } from "../draft.ts";
import { LIMITS } from "../limits.ts";
import { type Words, wholePlace } from "../yaml/nodes.ts";
import { parseFormula } from "./parse-formula.ts";
import type { FormulaProblem } from "./tokens.ts";

/** A measure or formula out of the source, written in the group `home`. One finding at most says why it could not be read. */
export function readFormula(words: Words, home?: readonly string[]): Outcome<Formula> {
  const { limit } = LIMITS.formulaLength;
  const all = wholePlace(words);
  if (words.text.length > limit) return failed([textTooLong(all, { count: words.text.length, limit })]);
  const plain = withoutHyphens(words.text);
  const read = parseFormula(plain ?? words.text, words.place, home);
  if ("problem" in read) {
    const start = Math.min(read.start, Math.max(words.text.length - 1, 0));
    return failed([say(read, words.text, words.place(start, Math.max(read.end, start + 1)))]);
  }
  if (plain === undefined) return outcome(read);
  return outcome(read, [hyphenReadAsMeasure(all, { text: words.text, read: plain })]);
}

const FUNCTIONS = ["min", "max", "round", "round-down", "round-up", "longest", "within"];

function say(found: FormulaProblem, text: string, at: Span): Finding {
  const part = text.slice(found.start, found.end);
  switch (found.problem) {
    case "unknown unit":
      return unknownUnit(at, { word: part, near: nearest(part, [...UNIT_WORDS.keys()]) });
    case "hyphen":
      return hyphenInFormula(at, { text: part });
    case "decimal comma":
      return decimalComma(at, { text: part });
    case "fraction behind a division":
      return fractionAfterDivision(at, { text });
    case "divided by zero":
      return divisionByZero(at, {});
    case "too large":
      return measureTooLarge(at, {});
    case "unknown function":
      return unknownFunction(at, { name: part, near: nearest(part, FUNCTIONS) });
    default:
      return measureNotRead(at, { text, problem: found.problem, part, more: found.more });
  }
}
