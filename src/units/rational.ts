/**
 * Exact rational numbers. Every length, position and count in the program is one of these until it is drawn or printed.
 *
 * A `Rational` is always reduced and its denominator is positive, so two equal numbers have equal fields.
 */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

const gcd = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

/** n / d, reduced. Throws a RangeError when d is zero: callers must have ruled that out. */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let [top, bottom] = [BigInt(n), BigInt(d)];
  if (bottom === 0n) throw new RangeError("a rational needs a denominator other than zero");
  if (bottom < 0n) [top, bottom] = [-top, -bottom];
  if (bottom === 1n) return { n: top, d: 1n };
  const g = gcd(top, bottom);
  return g === 1n ? { n: top, d: bottom } : { n: top / g, d: bottom / g };
}

export const ZERO = rational(0);
export const ONE = rational(1);
export const HALF = rational(1, 2);

export const add = (a: Rational, b: Rational): Rational =>
  a.d === b.d ? rational(a.n + b.n, a.d) : rational(a.n * b.d + b.n * a.d, a.d * b.d);
export const subtract = (a: Rational, b: Rational): Rational =>
  a.d === b.d ? rational(a.n - b.n, a.d) : rational(a.n * b.d - b.n * a.d, a.d * b.d);
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d);
/** a / b. Throws a RangeError when b is zero. */
export const divide = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n);
export const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d });
export const half = (a: Rational): Rational => multiply(a, HALF);

/** −1, 0 or 1 as a is below, at or above b. */
export const compare = (a: Rational, b: Rational): -1 | 0 | 1 => {
  const [left, right] = a.d === b.d ? [a.n, b.n] : [a.n * b.d, b.n * a.d];
  return left < right ? -1 : left > right ? 1 : 0;
};
export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d;
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const sign = (a: Rational): -1 | 0 | 1 => (a.n < 0n ? -1 : a.n > 0n ? 1 : 0);
export const absolute = (a: Rational): Rational => (a.n < 0n ? negate(a) : a);
export const min = (a: Rational, b: Rational): Rational => (less(b, a) ? b : a);
export const max = (a: Rational, b: Rational): Rational => (less(a, b) ? b : a);
export const sum = (terms: readonly Rational[]): Rational => terms.reduce(add, ZERO);

/** The largest whole number not above a. */
export const floor = (a: Rational): bigint => {
  const quotient = a.n / a.d;
  return a.n < 0n && quotient * a.d !== a.n ? quotient - 1n : quotient;
};
/** The smallest whole number not below a. */
export const ceil = (a: Rational): bigint => -floor(negate(a));
/** The nearest whole number, halves up. */
export const round = (a: Rational): bigint => floor(add(a, HALF));

/** The nearest double. Exact where the value is a whole number below 2^53. */
export const toNumber = (a: Rational): number => {
  if (a.d === 1n) return Number(a.n);
  const whole = a.n / a.d;
  return Number(whole) + Number(a.n - whole * a.d) / Number(a.d);
};
