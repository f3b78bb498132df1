import type { MeasureProblem } from "../../units/scan-measure.ts";
import { type Measure, scanMeasure } from "../../units/scan-measure.ts";
import { skipBlanks } from "../../units/scan-number.ts";

export type Token = { readonly start: number; readonly end: number } & (
  | { readonly is: "measure"; readonly measure: Measure }
  | { readonly is: "name"; readonly text: string }
  | { readonly is: "sign"; readonly sign: Sign }
);
export type Sign = "+" | "-" | "*" | "/" | "(" | ")" | ",";

/** What stops a formula from being read, and where in the text. */
export interface FormulaProblem {
  readonly problem:
    | MeasureProblem["problem"]
    | "hyphen"
    | "decimal comma"
    | "strange sign"
    | "no value"
    | "nothing between"
    | "bracket not closed"
    | "bracket not opened"
    | "ends early"
    | "unknown function"
    | "fraction behind a division"
    | "too deep"
    | "too large"
    | "arguments";
  readonly start: number;
  readonly end: number;
  /** How many arguments a function wants, the name that is no function. */
  readonly more?: string;
}

const SIGNS: ReadonlyMap<string, Sign> = new Map([
  ...(["+", "-", "*", "/", "(", ")", ","] as const).map((sign) => [sign, sign] as const),
  ["×", "*"],
  ["·", "*"],
  ["÷", "/"],
  ["−", "-"],
]);

/** Words joined by hyphens, and paths of them joined by full stops: `cabinet.top-rail.length`, `slat.1`. */
const NAME = /[\p{L}_][\p{L}\p{M}\p{N}_]*(?:[-.][\p{L}\p{M}\p{N}_]+)*/uy;
/** `34-1/2` or `2'-6`: a blank and a minus would give different lengths. */
const HYPHEN = /\d+-\d+[/⁄]\d|\d+\s*(?:'|′|’|ft|foot|feet)-\d/iuy;
const COMMA = /\d(?:,\d+)+/y;

export function tokens(text: string): readonly Token[] | FormulaProblem {
  const found: Token[] = [];
  for (let at = skipBlanks(text, 0); at < text.length; at = skipBlanks(text, at)) {
    const next = tokenAt(text, at);
    if ("problem" in next) return next;
    found.push(next);
    at = next.end;
  }
  return found;
}

function tokenAt(text: string, start: number): Token | FormulaProblem {
  const measure = scanMeasure(text, start);
  if (measure !== undefined) {
    if ("problem" in measure) return measure;
    const { end } = measure;
    COMMA.lastIndex = end - 1;
    const comma = COMMA.exec(text)?.[0];
    if (comma !== undefined) return { problem: "decimal comma", start, end: end - 1 + comma.length };
    HYPHEN.lastIndex = start;
    const hyphen = HYPHEN.exec(text)?.[0];
    if (hyphen !== undefined) return { problem: "hyphen", start, end: start + hyphen.length };
    return { is: "measure", measure: measure.measure, start, end };
  }
  NAME.lastIndex = start;
  const name = NAME.exec(text)?.[0];
  if (name !== undefined) {
    const end = start + name.length;
    // `width-1/2`: the hyphen and the 1 went into the name, and the name ends at the fraction line.
    const cut = /-\d+$/.exec(name);
    if (cut !== null && /^[/⁄]\d/.test(text.slice(end))) return { problem: "hyphen", start, end: end + 2 };
    return { is: "name", text: name, start, end };
  }
  const sign = SIGNS.get(text.charAt(start));
  return sign === undefined
    ? { problem: "strange sign", start, end: start + ((text.codePointAt(start) ?? 0) > 0xffff ? 2 : 1) }
    : { is: "sign", sign, start, end: start + 1 };
}
