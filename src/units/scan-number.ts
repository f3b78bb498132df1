import { add, type Rational, rational } from "./rational.ts";
import { FRACTION_CHARACTERS } from "./unit-words.ts";

const BLANK = "[ \\t\\u00a0\\u2009\\u202f]";
const CHARACTERS = [...FRACTION_CHARACTERS.keys()].join("");
const NUMBER = new RegExp(
  `(?<decimal>\\d*\\.\\d+)|(?:(?<whole>\\d+)${BLANK}+)?(?<top>\\d+)[/⁄](?<bottom>\\d+)|(?<before>\\d+)?${BLANK}*(?<character>[${CHARACTERS}])|(?<plain>\\d+)`,
  "y",
);

/** A number found in a text. `form` tells a fraction from a whole or decimal number: `width / 3/4` has two readings. */
export interface ScannedNumber {
  readonly value: Rational;
  readonly form: "whole" | "decimal" | "fraction" | "mixed";
  readonly end: number;
}

const decimal = (text: string): Rational => {
  const [whole = "", part = ""] = text.split(".");
  return rational(BigInt(`${whole}${part}` || "0"), 10n ** BigInt(part.length));
};

/**
 * Reads `34`, `12.5`, `3/4`, `34 1/2`, `34½` at `from`. Undefined where no number begins there;
 * "zero" where a fraction has nothing under its line but zero.
 */
export function scanNumber(text: string, from: number): ScannedNumber | "zero" | undefined {
  NUMBER.lastIndex = from;
  const found = NUMBER.exec(text);
  const groups = found?.groups;
  if (found === null || groups === undefined) return undefined;
  const end = from + found[0].length;
  if (groups.decimal !== undefined) return { value: decimal(groups.decimal), form: "decimal", end };
  if (groups.plain !== undefined) return { value: rational(BigInt(groups.plain)), form: "whole", end };
  const whole = groups.whole ?? groups.before;
  const [top, bottom] =
    groups.character === undefined
      ? [BigInt(groups.top ?? 0), BigInt(groups.bottom ?? 1)]
      : (FRACTION_CHARACTERS.get(groups.character) ?? [0, 1]);
  if (BigInt(bottom) === 0n) return "zero";
  const fraction = rational(top, bottom);
  if (whole === undefined) return { value: fraction, form: "fraction", end };
  return { value: add(rational(BigInt(whole)), fraction), form: "mixed", end };
}

/** The first place at or after `from` that is not a blank. */
export const skipBlanks = (text: string, from: number): number => {
  let at = from;
  while (at < text.length && /\s/.test(text.charAt(at))) at += 1;
  return at;
};
