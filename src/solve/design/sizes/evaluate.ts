import type { Finding } from "../../../findings/finding.ts";
import { divisionByZero } from "../../../findings/rules/division-by-zero.ts";
import { kindsDoNotMix } from "../../../findings/rules/kinds-do-not-mix.ts";
import { measureTooLarge } from "../../../findings/rules/measure-too-large.ts";
import { noRoomForIt } from "../../../findings/rules/no-room-for-it.ts";
import { wrongKind } from "../../../findings/rules/wrong-kind.ts";
import type { Formula, FunctionName } from "../../../parse/draft.ts";
import { inches, type Length, millimetres, UNITS_PER_INCH } from "../../../units/length.ts";
import {
  absolute,
  add,
  ceil,
  divide,
  equal,
  floor,
  less,
  max,
  min,
  multiply,
  negate,
  type Rational,
  rational,
  round,
  sign,
  subtract,
} from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { tellLength } from "../../../units/tell-length.ts";
import { KIND_WORDS, type Quantity } from "./quantity.ts";

/** What a formula needs to know about the place where it stands. */
export interface Scope {
  /** A bare number becomes this many units per 1 when it is a length. */
  readonly unit: Rational;
  readonly report: (finding: Finding) => void;
  /** Measures are not rounded, whatever the formula says. */
  readonly unrounded?: boolean;
  /** The value of a name; null when it has none, which has then been reported. */
  readonly name: (formula: Formula & { kind: "name" }) => Quantity | null;
}

const LARGEST = millimetres(100_000);

/** The value of a formula, or null when a finding (reported through the scope) stands in the way. */
export function evaluate(formula: Formula, scope: Scope): Quantity | null {
  switch (formula.kind) {
    case "number":
      return { kind: "bare", value: formula.value };
    case "measure":
      return { kind: "length", value: formula.value };
    case "angle":
      return { kind: "angle", value: formula.degrees };
    case "name":
      return scope.name(formula);
    case "negate": {
      const of = evaluate(formula.of, scope);
      return of && { kind: of.kind, value: negate(of.value) };
    }
    case "operation": {
      const left = evaluate(formula.left, scope);
      const right = evaluate(formula.right, scope);
      return left && right && operate(formula, ...measures(formula, left, right, scope), scope);
    }
    case "call": {
      const of = formula.of.map((argument) => evaluate(argument, scope));
      return of.some((q) => q === null) ? null : call(formula, of as Quantity[], scope);
    }
  }
}

/** The formula as a length of at most 100 m. */
export function evaluateLength(formula: Formula, scope: Scope): Length | null {
  const quantity = evaluate(formula, scope);
  if (quantity === null) return null;
  if (quantity.kind !== "bare" && quantity.kind !== "length") {
    scope.report(wrongKind(formula.at, { wanted: "a measure", found: KIND_WORDS[quantity.kind] }));
    return null;
  }
  const value = quantity.kind === "bare" ? multiply(quantity.value, scope.unit) : quantity.value;
  if (less(LARGEST, absolute(value))) {
    scope.report(measureTooLarge(formula.at, {}));
    return null;
  }
  return value;
}

/** The formula as a plain number. */
export function evaluateNumber(formula: Formula, scope: Scope): Rational | null {
  const quantity = evaluate(formula, scope);
  if (quantity === null) return null;
  if (quantity.kind === "bare" || quantity.kind === "plain") return quantity.value;
  scope.report(wrongKind(formula.at, { wanted: "a plain number", found: KIND_WORDS[quantity.kind] }));
  return null;
}

/** The formula as an angle in degrees; a number without a unit is one. */
export function evaluateAngle(formula: Formula, scope: Scope): Rational | null {
  const quantity = evaluate(formula, scope);
  if (quantity === null) return null;
  if (quantity.kind === "angle" || quantity.kind === "bare") return quantity.value;
  scope.report(wrongKind(formula.at, { wanted: "an angle", found: KIND_WORDS[quantity.kind] }));
  return null;
}

/** Two sizes by name are two measures when they are multiplied or divided: an area, or a plain number. */
function measures(
  { operator }: Formula & { kind: "operation" },
  left: Quantity,
  right: Quantity,
  { unit }: Scope,
): readonly [Quantity, Quantity] {
  if (operator === "+" || operator === "-" || !left.named || !right.named) return [left, right];
  return [
    { kind: "length", value: multiply(left.value, unit) },
    { kind: "length", value: multiply(right.value, unit) },
  ];
}

function operate(
  formula: Formula & { kind: "operation" },
  left: Quantity,
  right: Quantity,
  scope: Scope,
): Quantity | null {
  const { operator } = formula;
  if (operator === "+" || operator === "-") {
    const alike = unify(formula, [left, right], scope);
    if (!alike) return null;
    const [a, b] = alike.values as [Rational, Rational];
    const named = left.named || right.named;
    return { kind: alike.kind, value: operator === "+" ? add(a, b) : subtract(a, b), ...(named && { named }) };
  }
  if (operator === "/" && sign(right.value) === 0) {
    scope.report(divisionByZero(formula.right.at, {}));
    return null;
  }
  const kind = operator === "*" ? productKind(left.kind, right.kind) : quotientKind(left.kind, right.kind);
  if (kind === null) {
    scope.report(kindsDoNotMix(formula.at, { operator, left: KIND_WORDS[left.kind], right: KIND_WORDS[right.kind] }));
    return null;
  }
  const named = kind === "bare" && (left.named || right.named);
  const value = operator === "*" ? multiply(left.value, right.value) : divide(left.value, right.value);
  return { kind, value, ...(named && { named }) };
}

type Kind = Quantity["kind"];
const isFactor = (kind: Kind): boolean => kind === "bare" || kind === "plain";

const productKind = (a: Kind, b: Kind): Kind | null => {
  if (isFactor(a) && isFactor(b)) return a === "bare" && b === "bare" ? "bare" : "plain";
  if (isFactor(a)) return b;
  if (isFactor(b)) return a;
  return a === "length" && b === "length" ? "area" : null;
};

const quotientKind = (a: Kind, b: Kind): Kind | null => {
  if (isFactor(a) && isFactor(b)) return a === "bare" && b === "bare" ? "bare" : "plain";
  if (isFactor(b)) return a;
  if (a === b) return "plain";
  return a === "area" && b === "length" ? "length" : null;
};

/** Values of one kind, for sums and comparisons: bare numbers follow the others. */
function unify(
  formula: Formula & { kind: "operation" | "call" },
  of: readonly Quantity[],
  scope: Scope,
): { kind: Kind; values: readonly Rational[] } | null {
  const kind = of.find((q) => q.kind !== "bare")?.kind ?? "bare";
  const odd = of.find((q) => q.kind !== "bare" && q.kind !== kind);
  if (odd || (kind === "area" && of.some((q) => q.kind === "bare"))) {
    const operator = formula.kind === "operation" ? formula.operator : formula.name;
    const other = odd ?? (of.find((q) => q.kind === "bare") as Quantity);
    scope.report(kindsDoNotMix(formula.at, { operator, left: KIND_WORDS[kind], right: KIND_WORDS[other.kind] }));
    return null;
  }
  return {
    kind,
    values: of.map((q) => (q.kind === "bare" && kind === "length" ? multiply(q.value, scope.unit) : q.value)),
  };
}

const ROUNDERS: ReadonlyMap<FunctionName, (a: Rational) => bigint> = new Map([
  ["round", round],
  ["round-down", floor],
  ["round-up", ceil],
]);

/** The largest of the lengths behind the first value that is no larger than it; the smallest where all are larger. */
function longestOf([room, ...sold]: readonly Rational[]): Rational {
  const fits = sold.filter((each) => room === undefined || !less(room, each));
  return fits.length > 0 ? fits.reduce(max) : sold.reduce(min);
}

/** The first value, where it is no larger than the second, its room; what is sold comes behind them. Null: told. */
function within(
  formula: Formula & { kind: "call" },
  { kind, values: [value, room, ...sold] }: { kind: Kind; values: readonly Rational[] },
  { unit, report }: Scope,
): Quantity | null {
  if (value === undefined || room === undefined || !less(room, value)) return value ? { kind, value } : null;
  const units = equal(unit, rational(UNITS_PER_INCH)) ? "inch" : "mm";
  const step = units === "inch" ? inches(1, 16) : millimetres(1);
  const length = (each: Rational): Length => (kind === "bare" ? multiply(each, unit) : each);
  const tell = (each: Rational, way: "up" | "down"): string => tellLength(roundTo(length(each), step, way), units);
  const fitting = sold.filter((each) => !less(room, each));
  report(
    noRoomForIt((formula.of[0] as Formula).at, {
      ...{ size: tellLength(length(value), units), room: tell(max(room, rational(0)), "down") },
      more: tell(subtract(value, room), "up"),
      fits: sold.length === 0 ? null : fitting.length > 0 ? tellLength(length(fitting.reduce(max)), units) : "nothing",
    }),
  );
  return null;
}

function call(formula: Formula & { kind: "call" }, of: readonly Quantity[], scope: Scope): Quantity | null {
  const rounder = ROUNDERS.get(formula.name);
  const alike = unify(formula, of, scope);
  if (!alike) return null;
  if (formula.name === "longest") return { kind: alike.kind, value: longestOf(alike.values) };
  if (formula.name === "within") return within(formula, alike, scope);
  if (!rounder) return { kind: alike.kind, value: alike.values.reduce(formula.name === "min" ? min : max) };
  const [value, step] = alike.values as [Rational, Rational];
  if (sign(step) <= 0) {
    scope.report(divisionByZero((formula.of[1] as Formula).at, {}));
    return null;
  }
  if (scope.unrounded && alike.kind === "length") return { kind: "length", value };
  return { kind: alike.kind, value: multiply(rational(rounder(divide(value, step))), step) };
}
