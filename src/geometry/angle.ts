/** Points on the circle, by additions and multiplications only, so that every machine finds the same digits. */

/** Cosine and sine of k / n of a full turn; n ≠ 0. Quarter turns are exact, the rest is good to about 2e-16. */
export function circlePoint(k: number, n: number): readonly [number, number] {
  const quarter = Math.round((4 * k) / n);
  // What is left is at most an eighth of a turn, where the series converge at once.
  const x = (2 * Math.PI * (4 * k - quarter * n)) / (4 * n);
  const [cos, sin] = [series(x, 0), x * series(x, 1)];
  const turns = ((quarter % 4) + 4) % 4;
  if (turns === 1) return [-sin, cos];
  if (turns === 2) return [-cos, -sin];
  return turns === 3 ? [sin, -cos] : [cos, sin];
}

/** 1 − x²/((1+o)(2+o)) · (1 − x²/((3+o)(4+o)) · …): the cosine with o = 0, sin x / x with o = 1. */
function series(x: number, o: 0 | 1): number {
  let sum = 1;
  for (let i = 19; i > 0; i -= 2) sum = 1 - (x * x * sum) / ((i + o) * (i + 1 + o));
  return sum;
}

/** The angle, 0 to a quarter turn, whose tangent is x ≥ 0, in radians: halved until the series converges at once. */
export function arcTangent(x: number): number {
  if (x > 1) return Math.PI / 2 - arcTangent(1 / x);
  if (x > 0.1) return 2 * arcTangent(x / (1 + Math.sqrt(1 + x * x)));
  let sum = 0;
  for (let i = 19; i > 0; i -= 2) sum = 1 / i - x * x * sum;
  return x * sum;
}
