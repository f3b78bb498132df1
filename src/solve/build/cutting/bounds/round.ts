/** More than doubles lose in a bound, and far less than a cost: a bound is made smaller by it before it is rounded up. */
const ROUNDING = 1e-9;

interface Volume {
  readonly volume: number;
  readonly cost: number;
  readonly most: number;
}

/** The least cost of bins, whole or not, that hold a volume together; infinite where all of them do not. */
export function cheapestVolume(bins: readonly Volume[], needed: number): number {
  let [left, cost] = [needed, 0];
  for (const bin of bins.filter(({ volume }) => volume > 0).toSorted((a, b) => a.cost / a.volume - b.cost / b.volume)) {
    const taken = Math.min(bin.most, left / bin.volume);
    cost += taken * bin.cost;
    left -= taken * bin.volume;
    if (left <= ROUNDING * needed) return cost;
  }
  return left <= ROUNDING * needed ? cost : Number.POSITIVE_INFINITY;
}

/** The least sum of costs that is not below a bound, given that all costs are whole multiples of their greatest divisor. */
export function roundedUp(bound: number, costs: readonly number[]): number {
  const unit = costs.reduce(divisor, 0);
  if (unit === 0) return 0;
  return unit * Math.max(0, Math.ceil((bound / unit) * (1 - ROUNDING) - ROUNDING));
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
