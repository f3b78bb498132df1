import { multiply, type Rational, rational, subtract, toNumber } from "./rational.ts";

/** A length or position in units of 1/16 µm, exact. 1/64 in is 6,350 of them, 0.001 mm is 16. */
export type Length = Rational;

export const UNITS_PER_INCH = 406_400;
export const UNITS_PER_MM = 16_000;

/** The one tolerance of judgement, 0.01 mm: parts touch within it, and overlap or collide beyond it. */
export const TOLERANCE = 160;

/** Whether two places are one, within the tolerance. */
export const isSame = (a: Length, b: Length): boolean => Math.abs(toNumber(subtract(a, b))) <= TOLERANCE;

export const inches = (n: number | bigint, d: number | bigint = 1): Length =>
  multiply(rational(n, d), rational(UNITS_PER_INCH));
export const millimetres = (n: number | bigint, d: number | bigint = 1): Length =>
  multiply(rational(n, d), rational(UNITS_PER_MM));

/** As a double, for drawing and for printing decimals only. */
export const toMillimetres = (length: Length): number => toNumber(length) / UNITS_PER_MM;
export const toInches = (length: Length): number => toNumber(length) / UNITS_PER_INCH;
