/** What is too short on the page to be drawn. A curve is drawn by many short lines, none of which is a speck. */
import type { Point2 } from "../../../geometry/types.ts";

type Run = readonly [Point2, Point2];

/** Short lines that hang together make a curve from so many times the length of a speck on. */
const CURVE = 3;
/** Ends no farther apart than this are one, in units of 1/16 µm. */
const SAME = 2000;

/** Of the runs of one item those that are long enough, and those of curves. */
export function withoutSpecksIn(runs: readonly Run[], least: number): readonly Run[] {
  const isLong = ([[a, b], [c, d]]: Run): boolean => (c - a) * (c - a) + (d - b) * (d - b) >= least * least;
  const short = runs.filter((run) => !isLong(run));
  if (short.length === 0) return runs;
  const curves = new Set(
    chains(short)
      .filter((chain) => reachOf(chain) >= CURVE * least)
      .flat(),
  );
  return runs.filter((run) => isLong(run) || curves.has(run));
}

/** Runs that hang together by their ends. */
function chains(runs: readonly Run[]): readonly (readonly Run[])[] {
  const at = new Map<string, Run[]>();
  for (const run of runs) for (const end of run) at.set(keyOf(end), [...(at.get(keyOf(end)) ?? []), run]);
  const seen = new Set<Run>();
  return runs.flatMap((first) => {
    if (seen.has(first)) return [];
    seen.add(first);
    const chain = [first];
    for (const run of chain)
      for (const next of run.flatMap((end) => at.get(keyOf(end)) ?? []))
        if (!seen.has(next)) {
          seen.add(next);
          chain.push(next);
        }
    return [chain];
  });
}

const keyOf = ([u, v]: Point2): string => `${Math.round(u / SAME)} ${Math.round(v / SAME)}`;

/** The longer side of the rectangle around it. */
const reachOf = (chain: readonly Run[]): number =>
  Math.max(
    ...([0, 1] as const).map((i) => {
      const all = chain.flatMap((run) => run.map((end) => end[i]));
      return Math.max(...all) - Math.min(...all);
    }),
  );
