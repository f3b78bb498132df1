import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "./length.ts";
import { absolute, divide, equal, multiply, type Rational, rational, sign, subtract, ZERO } from "./rational.ts";
import { type Direction, roundTo } from "./round.ts";

export interface PrintOptions {
  readonly units: "inch" | "mm";
  /** The step that is printed: 1/16 in, 1 mm. Undefined prints the length as it is, a fraction if need be. */
  readonly precision?: Length;
  readonly direction?: Direction;
  /** `typographic` sets a narrow blank and a fraction slash, `ascii` what a keyboard has. Default `ascii`. */
  readonly style?: "ascii" | "typographic";
}

export interface PrintedLength {
  readonly text: string;
  /** What was printed less what was given: zero where nothing was rounded away. */
  readonly residual: Length;
}

const NARROW_BLANK = "\u202f";
const FRACTION_SLASH = "\u2044";
const MINUS = "\u2212";

/** `1 1/2`: a number as a whole part and a reduced fraction. */
export function printFraction(value: Rational, style: "ascii" | "typographic" = "ascii"): string {
  const [blank, slash, minus] = style === "ascii" ? [" ", "/", "-"] : [NARROW_BLANK, FRACTION_SLASH, MINUS];
  const { n, d } = absolute(value);
  const whole = n / d;
  const rest = n % d;
  const front = sign(value) < 0 ? minus : "";
  if (rest === 0n) return `${front}${whole}`;
  return `${front}${whole === 0n ? "" : `${whole}${blank}`}${rest}${slash}${d}`;
}

/** A decimal where it ends within six places; undefined where it does not. */
export function printDecimal(value: Rational, style: "ascii" | "typographic" = "ascii"): string | undefined {
  const millionths = multiply(absolute(value), rational(1_000_000));
  if (millionths.d !== 1n) return undefined;
  const digits = millionths.n.toString().padStart(7, "0");
  const text = `${digits.slice(0, -6)}.${digits.slice(-6)}`.replace(/\.?0+$/, "");
  return `${sign(value) < 0 ? (style === "ascii" ? "-" : MINUS) : ""}${text}`;
}

/**
 * A length as text, without its unit: `23/32` and `1 1/2` in inches, `600` and `12.5` in millimetres.
 * Rounded once, in the direction asked for.
 */
export function printLength(length: Length, options: PrintOptions): PrintedLength {
  const { units, precision, direction = "nearest", style = "ascii" } = options;
  const shown = precision === undefined ? length : roundTo(length, precision, direction);
  const value = divide(shown, rational(units === "inch" ? UNITS_PER_INCH : UNITS_PER_MM));
  const text =
    units === "inch" ? printFraction(value, style) : (printDecimal(value, style) ?? printFraction(value, style));
  return { text, residual: equal(shown, length) ? ZERO : subtract(shown, length) };
}

/** The same with its unit, for sentences: `15 1/2 in`, `600 mm`. */
export const sayLength = (length: Length, options: PrintOptions): string =>
  `${printLength(length, options).text}${options.style === "typographic" ? NARROW_BLANK : " "}${options.units === "inch" ? "in" : "mm"}`;
