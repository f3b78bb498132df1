/** A to Z, then AA, AB ...: the mark of the n-th line, counted from zero. */
export function markOf(n: number): string {
  const letter = String.fromCharCode(65 + (n % 26));
  return n < 26 ? letter : markOf(Math.floor(n / 26) - 1) + letter;
}
