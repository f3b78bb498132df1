/** What follows from the jobs alone, before any of them has its time. */
import type { Job } from "./job.ts";

export interface Network {
  readonly jobs: readonly Job[];
  /** By job: what comes after it, and how long after. */
  readonly next: readonly (readonly { readonly job: number; readonly lag: number }[])[];
  /** By job: at least this many minutes pass from its end to the end of everything. */
  readonly tails: readonly number[];
  /** By job: its place among all by their tails, the longest first; of jobs with the same tail the first of the plan. */
  readonly rank: readonly number[];
  /** Each after what comes before it; else in the given order. */
  readonly sorted: readonly number[];
}

/** `null` where the jobs go round in a circle. */
export function networkOf(jobs: readonly Job[]): Network | null {
  const next = jobs.map((): { job: number; lag: number }[] => []);
  for (const [i, { after }] of jobs.entries()) for (const { job, lag } of after) next[job]?.push({ job: i, lag });
  const open = jobs.map(({ after }) => after.length);
  const sorted: number[] = [];
  const ready = jobs.flatMap(({ after }, i) => (after.length === 0 ? [i] : []));
  while (ready.length > 0) {
    const first = Math.min(...ready);
    ready.splice(ready.indexOf(first), 1);
    sorted.push(first);
    for (const { job } of next[first] ?? []) {
      const left = (open[job] ?? 0) - 1;
      open[job] = left;
      if (left === 0) ready.push(job);
    }
  }
  if (sorted.length < jobs.length) return null;
  const tails = tailsOf(jobs, next, sorted);
  return { jobs, next, tails, rank: rankOf(tails), sorted };
}

function rankOf(tails: readonly number[]): readonly number[] {
  const order = [...tails.keys()].sort((a, b) => (tails[b] as number) - (tails[a] as number) || a - b);
  const rank = tails.map(() => 0);
  for (const [place, job] of order.entries()) rank[job] = place;
  return rank;
}

/** The longest path, or the least wait and all the work of what depends on the job: one pair of hands has to do all of it. */
function tailsOf(jobs: readonly Job[], next: Network["next"], sorted: readonly number[]): readonly number[] {
  const tails = jobs.map(({ tail }) => tail);
  const later = jobs.map((): ReadonlySet<number> => new Set());
  for (const i of sorted.toReversed()) {
    const own = next[i] ?? [];
    const all = new Set(own.flatMap(({ job }) => [job, ...(later[job] ?? [])]));
    later[i] = all;
    const path = own.map(({ job, lag }) => lag + (jobs[job]?.minutes ?? 0) + (tails[job] ?? 0));
    const work = [...all].reduce((so, job) => so + (jobs[job]?.minutes ?? 0), 0);
    const least = own.length > 0 ? Math.min(...own.map(({ lag }) => lag)) : 0;
    tails[i] = Math.max(tails[i] ?? 0, least + work, ...path);
  }
  return tails;
}
