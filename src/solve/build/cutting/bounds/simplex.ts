/** A column of a linear programme: rows and the numbers in them. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly (readonly [row: number, amount: number])[];
}

const SMALL = 1e-9;

/**
 * Least cost with each row's sum equal to its right side, in a basis that columns enter one at a time (the revised simplex method
 * with the inverse of the basis kept). It works in doubles: its prices are a proposal, and proven elsewhere.
 */
export class Simplex<C extends Column = Column> {
  private readonly inverse: Float64Array[];
  private readonly x: number[];
  private readonly basis: C[];

  /** `start` is a basis whose columns have one row each, the i-th row i, so that the right sides divided by them are not negative. */
  constructor(right: readonly number[], start: readonly C[]) {
    const amounts = start.map((column) => column.rows[0]?.[1] ?? 1);
    this.basis = [...start];
    this.x = right.map((value, i) => value / (amounts[i] ?? 1));
    this.inverse = right.map((_, i) => {
      const row = new Float64Array(right.length);
      row[i] = 1 / (amounts[i] ?? 1);
      return row;
    });
  }

  get cost(): number {
    return this.x.reduce((sum, x, i) => sum + x * (this.basis[i]?.cost ?? 0), 0);
  }

  /** What one more of each row's right side would cost. */
  prices(): Float64Array {
    const prices = new Float64Array(this.x.length);
    for (const [i, row] of this.inverse.entries()) {
      const cost = this.basis[i]?.cost ?? 0;
      if (cost !== 0)
        for (let j = 0; j < row.length; j += 1) prices[j] = (prices[j] as number) + cost * (row[j] as number);
    }
    return prices;
  }

  /** Brings a column into the basis. False where it changes nothing that can be counted on. */
  enter(column: C): boolean {
    const change = this.inverse.map((row) => column.rows.reduce((sum, [r, a]) => sum + (row[r] as number) * a, 0));
    let leaving = -1;
    let ratio = Number.POSITIVE_INFINITY;
    for (const [i, c] of change.entries()) {
      if (c <= SMALL) continue;
      const r = Math.max(0, this.x[i] as number) / c;
      if (r < ratio - SMALL || (r < ratio + SMALL && leaving >= 0 && c > (change[leaving] as number)))
        [leaving, ratio] = [i, r];
    }
    if (leaving < 0) return false;
    const pivot = this.inverse[leaving] as Float64Array;
    const c = change[leaving] as number;
    for (let j = 0; j < pivot.length; j += 1) pivot[j] = (pivot[j] as number) / c;
    for (const [i, row] of this.inverse.entries()) {
      const factor = change[i] as number;
      if (i === leaving || factor === 0) continue;
      for (let j = 0; j < row.length; j += 1) row[j] = (row[j] as number) - factor * (pivot[j] as number);
      this.x[i] = (this.x[i] as number) - factor * ratio;
    }
    this.x[leaving] = ratio;
    this.basis[leaving] = column;
    return true;
  }

  /** The columns of the basis and how much of each. */
  *solution(): Generator<readonly [C, number]> {
    for (const [i, column] of this.basis.entries()) yield [column, this.x[i] as number];
  }
}
