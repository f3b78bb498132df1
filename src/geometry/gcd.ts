/** The greatest common divisor, never negative; gcd(0, 0) is 0. */
export function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y > LIMIT) [x, y] = [y, x % y];
  if (y === 0n) return x;
  // Both below 2^53 after one more step: plain numbers are many times faster than big ones.
  let [m, n] = [Number(y), Number(x % y)];
  while (n !== 0) [m, n] = [n, m % n];
  return BigInt(m);
}

const LIMIT = BigInt(Number.MAX_SAFE_INTEGER);
