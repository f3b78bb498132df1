import type { Bin, Item } from "../item.ts";

/** With more boards than this the mixture of lengths is not looked into. */
const MOST_BOARDS = 30;

/**
 * A cost below which no purchase can come, by area: the cheapest mixture of boards that is as large as the blanks together. The
 * search stops there; nothing is claimed from it. `count` boards are needed at least.
 */
export function leastCost(items: readonly Item[], bins: readonly Bin[], count: number): number {
  const area = items.reduce(
    (sum, { shapes }) => sum + Math.min(...shapes.map(({ width, length }) => width * length)),
    0,
  );
  const cheapest = Math.min(...bins.map(({ cost }) => cost));
  const rate = Math.min(...bins.map((bin) => bin.cost / (bin.width * bin.length)));
  return Math.max(count * cheapest, count > MOST_BOARDS ? area * rate : mixture(bins, area));
}

function mixture(bins: readonly Bin[], area: number): number {
  const [bin, ...others] = bins;
  if (bin === undefined) return area > 0 ? Number.POSITIVE_INFINITY : 0;
  const one = bin.width * bin.length;
  const most = Math.ceil(Math.max(0, area) / one);
  if (others.length === 0) return most * bin.cost;
  const costs = Array.from({ length: most + 1 }, (_, n) => n * bin.cost + mixture(others, area - n * one));
  return Math.min(...costs);
}
