import type { Length } from "../../../units/length.ts";
import { add, divide, half, multiply, type Rational, rational, subtract } from "../../../units/rational.ts";

/** How the copies of a part are spread between two positions. */
export interface Row {
  readonly from: Length;
  readonly to: Length;
  readonly count: number;
  /** Extent of one copy along the row. */
  readonly each: Length;
  /** Equal gaps also at both ends (default), or only inside. */
  readonly gaps: "inside" | "both ends";
  /** Fixed gap between neighbours; the row is centred. */
  readonly gap: Length | null;
  /** Fixed distance centre to centre; the row is centred. */
  readonly every: Length | null;
}

/** The centre of copy `number`, counted from 1. */
export function centreOf(row: Row, number: number): Length {
  const { from, to, count, each, gap, every } = row;
  const middle = half(add(from, to));
  // Position in the row, from −(n−1)/2 to +(n−1)/2.
  const rank: Rational = rational(2 * number - count - 1, 2);
  if (every !== null) return add(middle, multiply(rank, every));
  if (gap !== null) return add(middle, multiply(rank, add(each, gap)));
  const room = subtract(subtract(to, from), multiply(each, rational(count)));
  const shares = row.gaps === "inside" ? count - 1 : count + 1;
  if (shares === 0) return middle;
  return add(middle, multiply(rank, add(each, divide(room, rational(shares)))));
}
