import { sizeNotPositive } from "../../findings/rules/size-not-positive.ts";
import { textTooLong } from "../../findings/rules/text-too-long.ts";
import { unknownWord } from "../../findings/rules/unknown-word.ts";
import { nearest } from "../../findings/suggest.ts";
import { type Rational, sign, toNumber } from "../../units/rational.ts";
import { scanNumber } from "../../units/scan-number.ts";
import type { Formula } from "../draft.ts";
import { readFormula } from "../formulas/read-formula.ts";
import { squash } from "../names.ts";
import type { Words } from "../yaml/nodes.ts";
import { type Kind, tell, tellWrong, type Where } from "./kind.ts";

/** Words for the reader, at most `most` characters. */
export const text = (most: number): Kind<string> => ({
  words: "a text",
  json: { type: ["string", "number"], maxLength: most },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, "a text");
    if (node.text.length <= most) return node.text.trim();
    return tell(where, node, textTooLong(node.at, { count: node.text.length, limit: most }));
  },
});

/** Reads a formula out of a piece of text, and tells what it finds. */
export function formulaIn(words: Words, where: Where): Formula | undefined {
  const { value, findings } = readFormula(words, where.home);
  where.findings.push(...findings);
  return value;
}

export const formula: Kind<Formula> = {
  words: "a measure, such as 34 1/2",
  json: { $ref: "#/$defs/measure" },
  read: (node, where) => (node.kind === "text" ? formulaIn(node, where) : tellWrong(where, node, formula.words)),
};

/** What a formula is that is nothing but a number or a measure; null for what has to be worked out. */
export function literal(of: Formula): Rational | null {
  if (of.kind === "number" || of.kind === "measure") return of.value;
  const value = of.kind === "negate" ? literal(of.of) : null;
  return value && { n: -value.n, d: value.d };
}

/** Reads how big something is out of a piece of text; undefined, and told, where that is written as zero or less. */
export function sizeIn(words: Words, where: Where, opening = false): Formula | undefined {
  const read = formulaIn(words, where);
  const value = read && literal(read);
  if (!value || sign(value) > 0) return read;
  const at = words.place(0, words.text.length);
  where.findings.push(sizeNotPositive(at, { said: words.text.trim(), ...(opening && { opening }) }));
  return undefined;
}

/** How big something is: a measure above zero. */
export const extent: Kind<Formula> = {
  ...formula,
  read: (node, where) => (node.kind === "text" ? sizeIn(node, where) : tellWrong(where, node, formula.words)),
};

/** A plain number, such as a price or a gauge. */
export const plainNumber: Kind<number> = {
  words: "a number",
  json: { type: "number", minimum: 0 },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, plainNumber.words);
    const digits = node.text.trim().replace(/^#/, "");
    const number = digits.length > 15 ? undefined : scanNumber(digits, 0);
    if (number === undefined || number === "zero" || number.end !== digits.length)
      return tellWrong(where, node, plainNumber.words);
    return toNumber(number.value);
  },
};

/** One of a few words. `also` gives other words for them. Case, blanks and hyphens do not matter. */
export function word<const T extends string>(words: readonly T[], also: Readonly<Record<string, T>> = {}): Kind<T> {
  const known = new Map<string, T>([
    ...words.map((each) => [squash(each), each] as const),
    ...Object.entries(also).map(([other, each]) => [squash(other), each] as const),
  ]);
  return {
    words: `one of ${words.join(", ")}`,
    json: { enum: [...words, ...Object.keys(also)] },
    read(node, where) {
      if (node.kind !== "text") return tellWrong(where, node, this.words);
      const found = known.get(squash(node.text));
      if (found !== undefined) return found;
      const near = nearest(node.text, [...words, ...Object.keys(also)]);
      return tell(where, node, unknownWord(node.at, { key: where.key, word: node.text, words, near }));
    },
  };
}

const answer = word(["yes", "no"], { true: "yes", false: "no" });
export const yesNo: Kind<boolean> = {
  words: "yes or no",
  json: { enum: ["yes", "no", true, false] },
  read(node, where) {
    const said = answer.read(node, where);
    return said === undefined ? undefined : said === "yes";
  },
};
