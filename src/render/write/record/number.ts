/** Numbers of the record: counted in millionths by whole numbers, so that no digit is lost on the way to the text. */
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";

const MILLION = 1_000_000n;

/** n / d to the nearest whole number, halves to the even one; d > 0. */
export function nearestEven(n: bigint, d: bigint): bigint {
  let quotient = n / d;
  let rest = n - quotient * d;
  if (rest < 0n) [quotient, rest] = [quotient - 1n, rest + d];
  const twice = 2n * rest;
  return twice > d || (twice === d && quotient % 2n !== 0n) ? quotient + 1n : quotient;
}

/** Millionths of a millimetre in n / d units of 1/16 µm. */
export const millionthsOf = (n: bigint, d: bigint): bigint => nearestEven(n * MILLION, d * BigInt(UNITS_PER_MM));

/** A length as millionths of a millimetre. */
export const millimetres = (length: Length): bigint => millionthsOf(length.n, length.d);

/** A double as millionths: the exact value of the double, rounded once. Throws a RangeError unless it is finite. */
export function millionths(value: number): bigint {
  if (!Number.isFinite(value)) throw new RangeError("the record holds finite numbers only");
  if (Math.abs(value) < 1e-7) return 0n;
  let [n, d] = [value, 1n];
  while (!Number.isInteger(n)) [n, d] = [n * 2, d * 2n];
  return nearestEven(BigInt(n) * MILLION, d);
}

/** 31750000n is "31.75". */
export function printMillionths(count: bigint): string {
  const digits = (count < 0n ? -count : count).toString().padStart(7, "0");
  const fraction = digits.slice(-6).replace(/0+$/, "");
  return `${count < 0n ? "-" : ""}${digits.slice(0, -6)}${fraction === "" ? "" : `.${fraction}`}`;
}
