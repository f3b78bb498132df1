/** Shares the width of a table among its columns, from what stands in them. */

/** Width with everything on one line, and with every word on its own. */
export interface Need {
  readonly natural: number;
  readonly least: number;
}

/** One column alone yields only while its text takes about so many lines. */
const MOST_LINES = 3;

/**
 * Widths that fill `available` at most. Where all fits on one line each column gets what it needs, and `stretch` the rest.
 * Else the column that stretches gives up width first; then all do, in proportion to what they can lose, down to their
 * longest words, and then below.
 */
export function shareWidth(needs: readonly Need[], available: number, stretch: number | null): number[] {
  const natural = needs.reduce((sum, need) => sum + need.natural, 0);
  const least = needs.reduce((sum, need) => sum + need.least, 0);
  if (natural <= available)
    return needs.map((need, i) => (i === stretch ? need.natural + available - natural : need.natural));
  const yielding = stretch === null ? undefined : needs[stretch];
  if (yielding !== undefined) {
    const left = available - (natural - yielding.natural);
    if (left >= Math.max(yielding.least, yielding.natural / MOST_LINES))
      return needs.map((need, i) => (i === stretch ? left : need.natural));
  }
  if (least >= available) return needs.map((need) => (need.least * available) / least);
  const share = (available - least) / (natural - least);
  return needs.map((need) => need.least + (need.natural - need.least) * share);
}

/** What one column gives to another, in points; and how often that is tried. */
const GIVEN = [4, 8, 16, 32, 64] as const;
const ROUNDS = 12;

/**
 * Widths with which the rows take fewer lines in all, by what a column gives to another, no word broken for it. `lines`: those of
 * each row in a column at a width.
 */
export function fewestLines(
  widths: readonly number[],
  needs: readonly Need[],
  lines: (column: number, width: number) => readonly number[],
): readonly number[] {
  const cost = (all: readonly number[]): number => {
    const columns = all.map((width, i) => lines(i, width));
    const high = columns[0]?.map((_, row) => Math.max(...columns.map((column) => column[row] ?? 0))) ?? [];
    return high.reduce((sum, count) => sum + count, 0);
  };
  let best = widths;
  let least = cost(widths);
  for (let round = 0; round < ROUNDS; round++) {
    let found: { readonly widths: readonly number[]; readonly cost: number } | null = null;
    for (const [to, wide] of best.entries()) {
      if (wide >= (needs[to]?.natural ?? 0)) continue;
      for (const [from, own] of best.entries())
        for (const by of GIVEN) {
          if (from === to || own - by < (needs[from]?.least ?? 0)) continue;
          const tried = best.map((width, i) => (i === to ? width + by : i === from ? width - by : width));
          const count = cost(tried);
          if (count < (found?.cost ?? least)) found = { widths: tried, cost: count };
        }
    }
    if (found === null) return best;
    [best, least] = [found.widths, found.cost];
  }
  return best;
}
