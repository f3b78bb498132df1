import type { Span } from "../../findings/span.ts";
import { inches, millimetres } from "../../units/length.ts";
import { absolute, less } from "../../units/rational.ts";
import type { Formula, FunctionName } from "../draft.ts";
import { LIMITS } from "../limits.ts";
import { normaliseName } from "../names.ts";
import { type FormulaProblem, type Sign, type Token, tokens } from "./tokens.ts";

type Read = Formula | FormulaProblem;

const ARGUMENTS: ReadonlyMap<string, { name: FunctionName; least: number; most: number; words: string }> = new Map([
  ["min", { name: "min", least: 1, most: 100, words: "one or more measures" }],
  ["max", { name: "max", least: 1, most: 100, words: "one or more measures" }],
  ["round", { name: "round", least: 2, most: 2, words: "a measure and a step, as in `round(width / 3, 1/16)`" }],
  ["round-down", { name: "round-down", least: 2, most: 2, words: "a measure and a step" }],
  ["longest", { name: "longest", least: 2, most: 100, words: "a room, and the lengths that are sold" }],
  [
    "within",
    { name: "within", least: 2, most: 100, words: "a measure, the room for it, and the lengths that are sold" },
  ],
  ["round-up", { name: "round-up", least: 2, most: 2, words: "a measure and a step" }],
]);

const LONGEST = millimetres(LIMITS.metres.limit * 1000);
/** A bare number may turn out to be inches or millimetres, or plain: only what is too long in either is refused here. */
const LARGEST = inches(LIMITS.metres.limit * 1000);

/**
 * Text to formula, by precedence: sums of products of signed terms. `place` gives the span of a stretch of the text.
 * One problem at most, the first.
 */
export function parseFormula(
  text: string,
  place: (start: number, end: number) => Span,
  home?: readonly string[],
): Read {
  const list = tokens(text);
  if ("problem" in list) return list;
  let index = 0;
  const peek = (): Token | undefined => list[index];
  const isSign = (...signs: readonly Sign[]): boolean => {
    const token = peek();
    return token?.is === "sign" && signs.includes(token.sign);
  };
  const end = (): number => list[index - 1]?.end ?? 0;
  const problem = (kind: FormulaProblem["problem"], token = peek(), more?: string): FormulaProblem => {
    const [start, stop] = token === undefined ? [Math.max(end() - 1, 0), text.length] : [token.start, token.end];
    return { problem: kind, start, end: stop, ...(more === undefined ? {} : { more }) };
  };

  function chain(signs: readonly Sign[], part: (depth: number) => Read, depth: number): Read {
    const start = peek()?.start ?? 0;
    let left = part(depth);
    while (!("problem" in left) && isSign(...signs)) {
      const token = peek();
      if (token?.is !== "sign") break;
      index += 1;
      const next = peek();
      if (token.sign === "/" && next?.is === "measure" && next.measure.form === "fraction")
        return problem("fraction behind a division", next);
      const right = part(depth);
      if ("problem" in right) return right;
      const operator = token.sign as "+" | "-" | "*" | "/";
      left = { kind: "operation", operator, left, right, at: place(start, end()) };
    }
    return left;
  }
  const sum = (depth: number): Read => chain(["+", "-"], product, depth);
  const product = (depth: number): Read => chain(["*", "/"], signed, depth);

  function signed(depth: number): Read {
    const token = peek();
    if (token === undefined) return problem(index === 0 ? "no value" : "ends early");
    if (depth > LIMITS.formulaDepth.limit) return problem("too deep");
    index += 1;
    if (token.is === "measure") return leaf(token);
    if (token.is === "name") return isSign("(") ? call(token, depth) : named(token);
    if (token.sign === "-") {
      const of = signed(depth + 1);
      return "problem" in of ? of : { kind: "negate", of, at: place(token.start, end()) };
    }
    if (token.sign !== "(") return problem("no value", token);
    const inside = sum(depth + 1);
    if ("problem" in inside) return inside;
    if (!isSign(")")) return peek() === undefined ? problem("bracket not closed", token) : problem("nothing between");
    index += 1;
    return { ...inside, at: place(token.start, end()) };
  }

  function leaf(token: Token & { is: "measure" }): Read {
    const at = place(token.start, token.end);
    const { measure } = token;
    if (measure.kind === "angle") return { kind: "angle", degrees: measure.degrees, at };
    const most = measure.kind === "measure" ? LONGEST : LARGEST;
    if (less(most, absolute(measure.value))) return problem("too large", token);
    return { kind: measure.kind, value: measure.value, at };
  }

  const named = (token: Token & { is: "name" }): Read => {
    const path = token.text.split(".").map(normaliseName);
    return { kind: "name", path, ...(home && { home }), at: place(token.start, token.end) };
  };

  function call(token: Token & { is: "name" }, depth: number): Read {
    const known = ARGUMENTS.get(token.text.toLowerCase());
    if (known === undefined) return problem("unknown function", token, token.text);
    const of: Formula[] = [];
    do {
      index += 1;
      const value = sum(depth + 1);
      if ("problem" in value) return value;
      of.push(value);
    } while (isSign(","));
    if (!isSign(")")) return peek() === undefined ? problem("bracket not closed", token) : problem("nothing between");
    index += 1;
    if (of.length < known.least || of.length > known.most) return problem("arguments", token, known.words);
    return { kind: "call", name: known.name, of, at: place(token.start, end()) };
  }

  const whole = sum(0);
  if ("problem" in whole || peek() === undefined) return whole;
  return problem(isSign(")") ? "bracket not opened" : "nothing between");
}
