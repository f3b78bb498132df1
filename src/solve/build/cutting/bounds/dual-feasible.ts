import type { Problem } from "../search/problem.ts";
import { cheapestVolume, roundedUp } from "./round.ts";

/** No more limits than this are tried in each direction. */
const MOST_LIMITS = 24;

/** A dual feasible function: sizes that fit a room together still do afterwards. Zero at zero, and never falling. */
type Feasible = (size: number) => number;

/**
 * A cost below which no way of packing the parts can come, whatever the cuts. In each direction sizes are exchanged by a dual
 * feasible function, and areas of what comes out are compared (S. P. Fekete and J. Schepers, 2001). Functions: the size itself;
 * sizes under a limit as nothing and those that leave less than it as the whole (S. Martello and P. Toth, 1990); whole numbers of
 * limits, rounded away from the middle (J. Carlier, F. Clautiaux and A. Moukrim, 2007). All are superadditive, so that they hold for smaller bins too.
 */
export function feasibleBound(problem: Problem, costs: readonly number[]): number {
  const wide = Math.max(...problem.bins.map((bin) => bin.width));
  const long = Math.max(...problem.bins.map((bin) => bin.length));
  const ways = problem.parts.map((part) => part.ways);
  const across = functions(
    ways.flat().map((way) => way.width),
    wide,
  ).map((f) => ({
    parts: ways.map((each) => each.map((way) => f(way.width))),
    bins: problem.bins.map((b) => f(b.width)),
  }));
  const along = functions(
    ways.flat().map((way) => way.length),
    long,
  ).map((f) => ({
    parts: ways.map((each) => each.map((way) => f(way.length))),
    bins: problem.bins.map((b) => f(b.length)),
  }));
  let best = dearestPart(problem, costs);
  for (const x of across)
    for (const y of along) {
      let volume = 0;
      for (let i = 0; i < ways.length; i += 1) {
        const [xs, ys] = [x.parts[i] as number[], y.parts[i] as number[]];
        let least = Number.POSITIVE_INFINITY;
        for (let w = 0; w < xs.length; w += 1) least = Math.min(least, (xs[w] as number) * (ys[w] as number));
        volume += least;
      }
      const bins = problem.bins.map((bin, i) => ({
        volume: (x.bins[i] as number) * (y.bins[i] as number),
        cost: costs[i] ?? 0,
        most: bin.most,
      }));
      best = Math.max(best, cheapestVolume(bins, volume));
    }
  return roundedUp(best, costs);
}

/** Some part needs a bin that is at least so dear. */
function dearestPart({ bins, parts }: Problem, costs: readonly number[]): number {
  let most = 0;
  for (const { ways } of parts) {
    let least = Number.POSITIVE_INFINITY;
    for (const [i, bin] of bins.entries())
      if (ways.some((way) => way.width <= bin.width && way.length <= bin.length))
        least = Math.min(least, costs[i] ?? 0);
    most = Math.max(most, least);
  }
  return most;
}

/** Shares of the whole room. */
function functions(sizes: readonly number[], whole: number): Feasible[] {
  const middle = whole / 2;
  const limits = thinned(
    [...new Set(sizes.map((size) => (size > middle ? whole - size + 1 : size)))]
      .filter((limit) => limit > 0 && limit <= middle)
      .toSorted((a, b) => a - b),
  );
  return [
    (size) => size / whole,
    (size) => (size > middle ? 1 : size === middle ? 0.5 : 0),
    ...limits.map(
      (limit): Feasible =>
        (size) =>
          size > whole - limit ? 1 : size < limit ? 0 : size / whole,
    ),
    ...limits.map((limit): Feasible => {
      const all = Math.floor(whole / limit);
      return (size) =>
        size > middle
          ? (all - Math.floor((whole - size) / limit)) / all
          : size === middle
            ? 0.5
            : Math.floor(size / limit) / all;
    }),
  ];
}

function thinned(limits: readonly number[]): readonly number[] {
  const step = Math.max(1, Math.ceil(limits.length / MOST_LIMITS));
  return limits.filter((_, i) => i % step === 0);
}
