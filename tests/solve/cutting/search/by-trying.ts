/** Small cutting problems solved by trying everything. Shares nothing with the program. */

export interface Small {
  readonly width: number;
  readonly length: number;
  readonly parts: readonly (readonly [number, number])[];
  readonly turn: boolean;
}

/** The fewest sheets from which the parts come with edge-to-edge cuts, however often the direction changes. */
export function fewestSheets({ width, length, parts, turn }: Small): number {
  const known = new Map<string, boolean>();
  /** Whether the parts of a set come out of a piece: it is one part, or a cut shares them out. */
  const comesOut = (set: number, w: number, l: number): boolean => {
    if (set === 0) return true;
    const key = `${set} ${w} ${l}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let found = false;
    if ((set & (set - 1)) === 0) {
      const [a, b] = parts[31 - Math.clz32(set)] ?? [0, 0];
      found = (a <= w && b <= l) || (turn && b <= w && a <= l);
    } else {
      for (let some = (set - 1) & set; some > 0 && !found; some = (some - 1) & set) {
        for (let at = 1; at < w && !found; at += 1) found = comesOut(some, at, l) && comesOut(set ^ some, w - at, l);
        for (let at = 1; at < l && !found; at += 1) found = comesOut(some, w, at) && comesOut(set ^ some, w, l - at);
      }
    }
    known.set(key, found);
    return found;
  };
  const least = new Map<number, number>([[0, 0]]);
  const sheets = (set: number): number => {
    const before = least.get(set);
    if (before !== undefined) return before;
    const first = set & -set;
    let best = Number.POSITIVE_INFINITY;
    for (let some = set; some > 0; some = (some - 1) & set)
      if ((some & first) !== 0 && comesOut(some, width, length)) best = Math.min(best, 1 + sheets(set ^ some));
    least.set(set, best);
    return best;
  };
  return sheets(2 ** parts.length - 1);
}

/** The least cost of boards for lengths that lie one behind the other. */
export const cheapestBoards = (
  lengths: readonly number[],
  boards: readonly { length: number; cost: number }[],
): number =>
  leastOfShares(lengths, (sums) => total(sums.map((sum) => cheapest(boards.filter(({ length }) => length >= sum)))));

const cheapest = (boards: readonly { cost: number }[]): number => Math.min(...boards.map(({ cost }) => cost));

const total = (costs: readonly number[]): number => costs.reduce((sum, cost) => sum + cost, 0);

/** The least cost over every way of sharing lengths out; `cost` gets the sum of the lengths in each share. */
export function leastOfShares(lengths: readonly number[], cost: (sums: readonly number[]) => number): number {
  const sums: number[] = [];
  const from = (index: number): number => {
    const length = lengths[index];
    if (length === undefined) return cost(sums);
    let best = Number.POSITIVE_INFINITY;
    for (let share = 0; share <= sums.length; share += 1) {
      sums[share] = (sums[share] ?? 0) + length;
      best = Math.min(best, from(index + 1));
      sums[share] = (sums[share] ?? 0) - length;
      if (sums[share] === 0) sums.length = share;
    }
    return best;
  };
  return from(0);
}
