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
